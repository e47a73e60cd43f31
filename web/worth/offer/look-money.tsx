// What looking further is worth in money at the asked price, each look with a way to take it.
import {Link} from "wouter";
import type {LooksWorth} from "../../../worth/answer.ts";
import {sayShare} from "../../examine/say-share.ts";
import {sayAmount} from "../money.ts";
import {sayAbout} from "../say.ts";

export function LookMoney({looks, currency, id}: {readonly looks: LooksWorth | null; readonly currency: string; readonly id: string}) {
  if (!looks) return <section className="look-money" aria-label="What a look is worth"><h2>What a look is worth</h2><p className="quiet">Write down what the seller asks: then each look that is left has its worth in money.</p></section>;
  const some = looks.looks.filter(({worth}) => worth > 0);
  // Less than one part in two hundred of the price is not worth the walk back to the light.
  const best = some[0] && some[0].worth * 200 >= looks.asked ? some[0] : null;
  return (
    <section className="look-money" aria-label="What a look is worth">
      <h2>{best ? `Look before you pay: ${best.name}` : some.length > 0 ? "No look would change the offer by much" : "No look would change the offer"}</h2>
      {best && <p>At this price it is worth {sayAbout({cents: best.worth, currency})} on average to look there first.</p>}
      <ol>
        {some.map(({mark, name, worth, turns, opensSeam}) => (
          <li key={mark}>
            <Link href={`/examine/${id}?look=${encodeURIComponent(mark)}`}>{name}</Link> <b>{sayAbout({cents: worth, currency})}</b>
            <span className="quiet">changes the decision in {sayShare(turns)}{opensSeam ? "; opens a seam" : ""}</span>
          </li>
        ))}
      </ol>
      {looks.knowing > 0 && <p className="quiet">Knowing the year for certain would be worth {sayAmount({cents: looks.knowing, currency})} at most.</p>}
    </section>
  );
}
