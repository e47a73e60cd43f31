// What is known of the garment beside its marks: its number, who may have made it, where it hangs, what is asked for it.
import type {Book} from "../../engine/index.ts";
import {standings, type Content} from "../../store/model.ts";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";
import {MakerTicks} from "./maker-ticks.tsx";
import {PriceField} from "./price-field.tsx";

export interface DetailsProps {
  readonly content: Content;
  readonly books: readonly Book[];
  onChange(content: Content): void;
}

const marketNames: Readonly<Record<string, string>> = {"": "not known", us: "United States", uk: "United Kingdom", canada: "Canada", europe: "Europe", japan: "Japan", other: "elsewhere"};
const types = ["trousers", "jacket", "shirt", "overalls", "sweatshirt", "tee"];

export function DetailsForm({content, books, onChange}: DetailsProps) {
  const {garment} = content;
  const set = (part: Partial<Content["garment"]>) => onChange({...content, garment: {...garment, ...part}});
  const markets = [...new Set(books.flatMap((book) => Object.keys(book.markets)))];
  return (
    <section className="details" aria-label="The garment in words">
      <header><h2>In words</h2></header>
      <div className="details-grid">
        <Field label="Number">{(tie) => <SettledInput {...tie} required maxLength={100} value={garment.garment} read={(typed) => typed.trim() || null} onSettle={(number) => set({garment: number})} />}</Field>
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
              {[...new Set(["", ...markets, garment.market ?? ""])].map((market) => <option key={market} value={market}>{marketNames[market] ?? market}</option>)}
            </select>
          )}
        </Field>
        <MakerTicks maker={garment.maker} books={books} onMaker={(maker) => set({maker})} />
        <Field label="Kept where">{(tie) => <input {...tie} maxLength={200} value={content.place} onChange={({target}) => onChange({...content, place: target.value})} />}</Field>
        <Field label="Standing">
          {(tie) => <select {...tie} value={content.standing} onChange={({target}) => onChange({...content, standing: target.value as Content["standing"]})}>{standings.map((one) => <option key={one}>{one}</option>)}</select>}
        </Field>
        <Field label="Tags" hint="with commas between">
          {(tie) => <SettledInput {...tie} value={content.tags.join(", ")} read={(typed) => tagsOf(typed).join(", ")} onSettle={(typed) => onChange({...content, tags: tagsOf(typed)})} />}
        </Field>
        <PriceField label="Paid" money={content.paid} onMoney={(paid) => onChange({...content, paid})} />
        <PriceField label="Asked" money={content.asked} onMoney={(asked) => onChange({...content, asked})} />
      </div>
      <Field label="Notes">{(tie) => <textarea {...tie} rows={3} maxLength={4000} value={garment.note ?? ""} onChange={({target}) => set({note: target.value || undefined})} />}</Field>
    </section>
  );
}

const tagsOf = (typed: string) => [...new Set(typed.split(",").map((tag) => tag.trim().slice(0, 60)).filter((tag) => tag !== ""))].slice(0, 40);
