// Told honestly: there are too few sales for a price, and what would help.
import {Link} from "wouter";
import type {Content, GarmentRecord} from "../../../store/model.ts";
import type {WorthAnswer} from "../../../worth/answer.ts";
import {saySales} from "../say.ts";
import {sayLike} from "./price-verdict.tsx";

export function TooFew({answer: {sales}, record: {id, content}}: {readonly answer: WorthAnswer; readonly record: GarmentRecord}) {
  const kind = content.garment.type ?? "this kind";
  const open = openIn(content);
  const missing = Math.max(1, Math.ceil(sales.needed - sales.like));
  return (
    <section className="price-verdict" aria-label="Worth">
      <p className="quiet">What it is worth</p>
      <h1>Too few sales to say</h1>
      <p className="odds">{sales.kind === 0 ? `No sale of ${kind} is written down.` : `${saySales(sales.kind)} of ${kind}, which amount to ${sayLike(sales.like)}; ${sales.needed} are needed.`}</p>
      <div className="help-box">
        <b>What would help.</b> About {saySales(missing)} of {kind} by the same maker and from those years, with day and price. Fewer do when they are close to it; more are needed when they are not.
        <p className="worth-line"><Link href={`/sales?kind=${encodeURIComponent(kind)}&write=new`} className="worth-go">Write a sale down</Link> <Link href="/sales/bring-in" className="worth-go">Bring in a list of sales</Link></p>
      </div>
      {open.length > 0 && <p>It helps, too, to say more of this one: <Link href={`/examine/${id}`}>{open.join(", ")}</Link> {open.length === 1 ? "is" : "are"} still open.</p>}
      {sales.leftOut.length > 0 && <p className="quiet">Left out: {sales.leftOut.map(({why, count}) => `${saySales(count)} (${why})`).join(", ")}.</p>}
    </section>
  );
}

/** What sales are compared by and nobody has said of this garment yet. */
const openIn = ({garment, dating, state, sizes}: Content): readonly string[] => [...(garment.maker === undefined ? ["its maker"] : []), ...(dating === null || dating.kind === "cannot tell" ? ["when it was made"] : []), ...(state === null ? ["its state"] : []), ...(sizes === null ? ["its size"] : [])];
