// The sales that the price comes from, the heaviest first, each with its part in it and a way to it.
import {Link} from "wouter";
import type {WorthAnswer} from "../../../worth/answer.ts";
import {sayAmount} from "../money.ts";
import {capital, sayAbout, sayDay, saySales, withNames} from "../say.ts";

export function SalesUsed({answer: {used, sales, currency, method}, makers}: {readonly answer: WorthAnswer; readonly makers: ReadonlyMap<string, string>}) {
  return (
    <section aria-label="Sales behind it">
      <header><h2>Sales behind it</h2><span className="quiet">{used.length < sales.total ? `the ${used.length} heaviest of ${sales.total.toLocaleString()}` : saySales(sales.total)}</span></header>
      <ol className="used">
        {used.map(({id, share, soldOn, price, adjusted, words}) => (
          <li key={id}>
            <Link href={`/sales?sale=${id}`}>{capital(withNames(words, makers))}</Link>
            <span className="used-money">{sayAmount(price)}</span>
            <span className="quiet">{sayDay(soldOn)}; today and as this garment {sayAbout({cents: adjusted, currency})}</span>
            <span className="used-share"><Weight share={share} /> {share < 0.01 ? "less than 1" : Math.round(share * 100)} in 100</span>
          </li>
        ))}
      </ol>
      <details className="method">
        <summary>How it was worked out</summary>
        <ul>
          {method.words.map((line) => <li key={line}>{line}</li>)}
          {method.index ? <li>Prices of other years in money of today: {method.index.name}, until {method.index.until} ({method.index.source}{method.index.status ? `; ${method.index.status}` : ""}).</li> : <li>Prices as they were paid, without a price index.</li>}
          {sales.leftOut.map(({why, count}) => <li key={why}>Left out: {saySales(count)}, {why}.</li>)}
        </ul>
      </details>
    </section>
  );
}

/** Ten stitches are three tenths of the price. */
function Weight({share}: {share: number}) {
  const sewn = Math.min(10, Math.max(1, Math.round(share * 33)));
  return <svg className="used-weight" width={60} height={4} aria-hidden="true">{Array.from({length: 10}, (_, i) => <rect key={i} className={i < sewn ? "sewn" : "unsewn"} x={i * 6} width={4} height={3} />)}</svg>;
}
