// What has waited longest, each with the way to it.
import {useState} from "react";
import {Link} from "wouter";
import type {BookOfCurrency} from "../../../worth/answer.ts";
import {Button} from "../../ui/button.tsx";
import {sayAmount} from "../money.ts";

const atOnce = 10;

export function SlowMovers({book: {slow, currency}}: {readonly book: Pick<BookOfCurrency, "slow" | "currency">}) {
  const [shown, setShown] = useState(atOnce);
  const say = (cents: number | null) => (cents === null ? null : sayAmount({cents, currency}));
  return (
    <section className="slow" aria-label="What waits longest">
      <header><h2>What waits longest</h2><span className="quiet">since listed, else since bought</span></header>
      {slow.length === 0 && <p className="quiet">Nothing that is for sale has a day it was bought or listed on.</p>}
      <ol>
        {slow.slice(0, shown).map(({id, number, kind, days, usual, paid, asked}) => (
          <li key={id}>
            <Link href={`/worth/${id}`}><span className="code">{number}</span> {kind}</Link>
            <b>{`${days.toLocaleString()} ${days === 1 ? "day" : "days"}`}</b>
            <span className="quiet">{[usual === null ? null : `${Math.round(usual)} days are usual`, paid === null ? null : `paid ${say(paid)}`, asked === null ? null : `asked ${say(asked)}`].filter((part) => part !== null).join("; ")}</span>
          </li>
        ))}
      </ol>
      {slow.length > shown && <p><Button onClick={() => setShown(shown + atOnce)}>{`Show ${Math.min(atOnce, slow.length - shown)} more`}</Button></p>}
    </section>
  );
}
