// What is known of the garment beside its marks: its number, who may have made it, where it hangs, what is asked for it.
import type {Book} from "../../engine/index.ts";
import {standings, type Content} from "../../store/model.ts";
import {Field} from "../ui/field.tsx";
import {PriceField} from "./price-field.tsx";

export interface DetailsProps {
  readonly content: Content;
  readonly books: readonly Book[];
  onChange(content: Content): void;
}

const types = ["trousers", "jacket", "shirt", "overalls", "sweatshirt", "tee"];

export function DetailsForm({content, books, onChange}: DetailsProps) {
  const {garment} = content;
  const set = (part: Partial<Content["garment"]>) => onChange({...content, garment: {...garment, ...part}});
  const makers = books.filter(({kind}) => kind === "maker");
  const possible = garment.maker === undefined ? [] : [garment.maker].flat();
  const markets = [...new Set(books.flatMap((book) => Object.keys(book.markets)))];
  const tick = (maker: string, on: boolean) => {
    const next = on ? [...possible, maker] : possible.filter((one) => one !== maker);
    set({maker: next.length === 0 ? undefined : next.length === 1 ? next[0] : next});
  };
  return (
    <section className="details" aria-label="The garment in words">
      <header><h2>In words</h2></header>
      <div className="details-grid">
        <Field label="Number">{(tie) => <input {...tie} required maxLength={100} value={garment.garment} onChange={({target}) => target.value !== "" && set({garment: target.value})} />}</Field>
        <Field label="Title">{(tie) => <input {...tie} maxLength={300} value={garment.title ?? ""} onChange={({target}) => set({title: target.value || undefined})} />}</Field>
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
              {[...new Set(["", ...markets, garment.market ?? ""])].map((market) => <option key={market} value={market}>{market || "not known"}</option>)}
            </select>
          )}
        </Field>
        <fieldset className="makers">
          <legend>Who may have made it</legend>
          {makers.map(({book, title}) => <label key={book}><input type="checkbox" checked={possible.includes(book)} onChange={({target}) => tick(book, target.checked)} />{title.split(",")[0]}</label>)}
          <p className="quiet">{possible.length === 0 ? "Nobody ticked: the public rules alone." : possible.length > 1 ? "Several are possible; the marks decide." : ""}</p>
        </fieldset>
        <Field label="Kept where">{(tie) => <input {...tie} maxLength={200} value={content.place} onChange={({target}) => onChange({...content, place: target.value})} />}</Field>
        <Field label="Standing">
          {(tie) => <select {...tie} value={content.standing} onChange={({target}) => onChange({...content, standing: target.value as Content["standing"]})}>{standings.map((one) => <option key={one}>{one}</option>)}</select>}
        </Field>
        <PriceField label="Paid" money={content.paid} onMoney={(paid) => onChange({...content, paid})} />
        <PriceField label="Asked" money={content.asked} onMoney={(asked) => onChange({...content, asked})} />
      </div>
      <Field label="Notes">{(tie) => <textarea {...tie} rows={3} maxLength={4000} value={garment.note ?? ""} onChange={({target}) => set({note: target.value || undefined})} />}</Field>
    </section>
  );
}
