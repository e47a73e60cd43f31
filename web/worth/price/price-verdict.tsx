// The price in large: what it is worth as it stands, between what, and from how many sales; or that there are too few to say.
import type {WorthAnswer} from "../../../worth/answer.ts";
import {sayShare} from "../../examine/say-share.ts";
import {sayAbout, sayBetween, sayOften, saySales} from "../say.ts";

export function PriceVerdict({answer}: {readonly answer: WorthAnswer}) {
  const {price, currency, branches, sales} = answer;
  if (!price) return null;
  const eight = price.ranges.find(({share}) => share === 0.8);
  const others = price.ranges.filter(({share}) => share !== 0.8);
  const likeliest = [...branches].filter((branch) => branch.price !== null && branch.share < 0.97).slice(0, 3);
  return (
    <section className="price-verdict" aria-label="Worth">
      <p className="quiet">As it stands, worth about</p>
      <h1 aria-live="polite">{sayAbout({cents: price.typical, currency})}</h1>
      <p className="odds">{sayOften(eight?.share ?? 0.8)} between {sayBetween(price.low, price.high, currency).replace(" to ", " and ")}</p>
      <ul className="bounds">
        {likeliest.map((branch) => <li key={branch.words}>if {branch.words} ({sayShare(branch.share)}): <b>{sayBetween(branch.price!.low, branch.price!.high, currency)}</b></li>)}
        {others.map(({share, low, high}) => <li key={share}>{sayOften(share)}: {sayBetween(low, high, currency)}</li>)}
        <li>from {saySales(sales.total)}: together they amount to {sayLike(sales.like)}</li>
      </ul>
    </section>
  );
}

/** "about 9 good comparisons" */
export function sayLike(like: number): string {
  if (like < 0.95) return "less than one good comparison";
  const about = like < 3 ? Math.round(like * 2) / 2 : Math.round(like);
  return about === 1 ? "about one good comparison" : `about ${about.toLocaleString()} good comparisons`;
}
