// The books of the shop: what was bought, spent, sold and earned, by kind, maker and decade, month by month, and what waits longest.
import {useEffect, useState} from "react";
import {useLocation, useSearch} from "wouter";
import type {Problem} from "../../../engine/problem.ts";
import type {BookOfCurrency, ShopBooks} from "../../../worth/answer.ts";
import {getJson, problemsOf} from "../../api.ts";
import {useMakerNames} from "../../rack/use-maker-names.ts";
import {ProblemList} from "../../ui/problem-list.tsx";
import {sayAmount} from "../money.ts";
import {capital} from "../say.ts";
import {WorthWays} from "../worth-ways.tsx";
import {Accounts, sayMargin} from "./accounts.tsx";
import {MonthPlot, sayMonthName} from "./month-plot.tsx";
import {readSpan, spans, writeSpan} from "./span.ts";
import {SlowMovers} from "./slow-movers.tsx";
import "../worth.css";

export function ShopScreen() {
  const search = useSearch();
  const [, go] = useLocation();
  const {from, until} = readSpan(search);
  const [shown, setShown] = useState<ShopBooks | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const question = writeSpan({from, until});
  useEffect(() => {
    const stop = new AbortController();
    getJson<ShopBooks>(`/api/shop${question}`, {signal: stop.signal}).then(
      (books) => {
        setShown(books);
        setProblems([]);
      },
      (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)),
    );
    return () => stop.abort();
  }, [question]);
  const to = (span: {from: string | null; until: string | null}) => go(`/shop${writeSpan(span)}`, {replace: true});
  const today = new Date().toISOString().slice(0, 10);
  return (
    <main className="worth" aria-busy={shown === null}>
      <WorthWays />
      <form className="shop-span" aria-label="From when until when" onSubmit={(event) => event.preventDefault()}>
        <span role="group" aria-label="Often asked for" className="shop-spans">
          {spans(today).map(({name, ...span}) => <button key={name} type="button" className="plain" aria-pressed={span.from === from && span.until === until} onClick={() => to(span)}>{name}</button>)}
        </span>
        <label>from<input type="date" max={today} value={from ?? ""} onChange={({target}) => to({from: target.value || null, until})} /></label>
        <label>until<input type="date" max={today} value={until ?? ""} onChange={({target}) => to({from, until: target.value || null})} /></label>
      </form>
      <ProblemList problems={problems} />
      {!shown && problems.length === 0 && <><p className="quiet">Adding it up …</p><h1>…</h1></>}
      {shown?.books.length === 0 && <section className="price-verdict"><h1>No books yet</h1><p>Write down on a garment what you paid, what went into it and what it sold for: on its screen of worth, under “Spent and earned”.</p></section>}
      {shown?.books.map((book) => <Book key={book.currency} book={book} alone={shown.books.length === 1} />)}
      {shown && <footer className="notice worth-notice">{shown.notes.map((line) => <p key={line}>{line}</p>)}</footer>}
    </main>
  );
}

function Book({book, alone}: {book: BookOfCurrency; alone: boolean}) {
  const makerName = useMakerNames();
  const {currency, profit, margin, taken, spent, laidOut, tied, unknownPaid} = book;
  const say = (cents: number) => sayAmount({cents, currency});
  const sums = [["taken for what was sold", taken], ["spent on garments", spent], ["laid out: cleaning, fees, postage", laidOut], ["tied up in what is not sold", tied]] as const;
  return (
    <section className="shop-book" aria-label={alone ? "Books" : `Books in ${currency}`}>
      <div className="worth-head">
        <section className="price-verdict" aria-label="Profit">
          <p className="quiet">{profit < 0 ? "Lost on what was sold" : "Earned on what was sold"}{alone ? "" : `, in ${currency}`}</p>
          <h1>{say(Math.abs(profit))}</h1>
          <p className="odds">{margin === null ? "Nothing sold in this time" : `a margin of ${sayMargin(margin)}`}</p>
          <dl className="shop-sums">{sums.map(([name, cents]) => <div key={name}><dt>{name}</dt><dd>{say(cents)}</dd></div>)}</dl>
          {unknownPaid > 0 && <p className="quiet">{unknownPaid === 1 ? "One sold garment has" : `${unknownPaid} sold garments have`} no note of what was paid: left out of profit and margin.</p>}
        </section>
        {book.months.length > 0 && <MonthPlot book={book} />}
      </div>
      {book.months.length > 0 && <Months book={book} />}
      <div className="shop-accounts">
        <Accounts title="By kind" accounts={book.byKind} currency={currency} />
        <Accounts title="By maker" accounts={book.byMaker} currency={currency} nameOf={(name) => capital(makerName(name))} />
        <Accounts title="By decade" accounts={book.byDecade} currency={currency} />
        <SlowMovers book={book} />
      </div>
    </section>
  );
}

/** The plot in figures. */
function Months({book: {months, currency}}: {book: BookOfCurrency}) {
  const say = (cents: number) => sayAmount({cents, currency});
  return (
    <details className="month-table">
      <summary>Month by month, in figures</summary>
      <div className="worth-table" tabIndex={0} role="group" aria-label="Month by month, in figures">
        <table>
          <thead><tr>{["Month", "Bought", "Sold", "Spent", "Laid out", "Taken", "Profit"].map((head, i) => <th key={head} scope="col" className={i > 0 ? "figure" : undefined}>{head}</th>)}</tr></thead>
          <tbody>
            {months.toReversed().map(({month, bought, sold, spent, laidOut, taken, profit}) => (
              <tr key={month}><th scope="row">{sayMonthName(month)}</th><td>{bought}</td><td>{sold}</td><td>{say(spent)}</td><td>{say(laidOut)}</td><td>{say(taken)}</td><td>{say(profit)}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
