// What decides which books and which drawing hold: the kind of garment, where it was sold, who may have made it. Folded to one line once said.
import {useState} from "react";
import {unlisted, type Book, type Garment} from "../../engine/index.ts";
import {Field} from "../ui/field.tsx";
import {MakerTicks} from "./maker-ticks.tsx";

export interface BasicsProps {
  readonly garment: Garment;
  readonly books: readonly Book[];
  onChange(garment: Garment): void;
}

const types = ["trousers", "jacket", "shirt", "overalls", "sweatshirt", "tee"];
const marketNames: Readonly<Record<string, string>> = {"": "not known", us: "United States", uk: "United Kingdom", canada: "Canada", europe: "Europe", japan: "Japan", other: "elsewhere"};

export function BasicsPanel({garment, books, onChange}: BasicsProps) {
  const [open, setOpen] = useState(garment.maker === undefined);
  const set = (part: Partial<Garment>) => onChange({...garment, ...part});
  const markets = [...new Set(books.flatMap((book) => Object.keys(book.markets)))];
  return (
    <details className="basics" open={open} onToggle={({currentTarget}) => setOpen(currentTarget.open)}>
      <summary><h2>{sayBasics(garment, books)}</h2><span className="quiet">{open ? "fold" : "change"}</span></summary>
      <div className="details-grid">
        <Field label="Kind of garment">
          {(tie) => (
            <select {...tie} value={garment.type ?? ""} onChange={({target}) => set({type: target.value || undefined})}>
              {[...new Set(["", ...types, garment.type ?? ""])].map((type) => <option key={type} value={type}>{type || "not said"}</option>)}
            </select>
          )}
        </Field>
        <Field label="Sold in">
          {(tie) => (
            <select {...tie} value={garment.market ?? ""} onChange={({target}) => set({market: target.value || undefined})}>
              {[...new Set(["", ...markets, garment.market ?? ""])].map((market) => <option key={market} value={market}>{marketNames[market] ?? market}</option>)}
            </select>
          )}
        </Field>
        <MakerTicks maker={garment.maker} books={books} onMaker={(maker) => set({maker})} />
      </div>
    </details>
  );
}

/** "Trousers by Marrowfield Dungaree Company, sold in the United States". */
function sayBasics({type, maker, market}: Garment, books: readonly Book[]): string {
  const makers = (maker === undefined ? [] : [maker].flat()).map((one) => (one === unlisted ? "somebody without a book" : (books.find(({book}) => book === one)?.title.split(",")[0] ?? one)));
  const where = market === undefined ? "" : market === "other" ? ", sold elsewhere" : `, sold in ${market === "us" || market === "uk" ? "the " : ""}${marketNames[market] ?? market}`;
  const kind = type ?? "garment";
  return `${kind.charAt(0).toUpperCase()}${kind.slice(1)}, ${makers.length === 0 ? "maker not known" : `by ${makers.join(" or ")}`}${where}`;
}
