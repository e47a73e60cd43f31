// What is known of the garment beside its marks: its number, where it hangs, what is asked for it.
import {standings, type Content} from "../../store/model.ts";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";
import {PriceField} from "./price-field.tsx";

export interface DetailsProps {
  readonly content: Content;
  onChange(content: Content): void;
}

export function DetailsForm({content, onChange}: DetailsProps) {
  const {garment} = content;
  const set = (part: Partial<Content["garment"]>) => onChange({...content, garment: {...garment, ...part}});
  return (
    <section className="details" aria-label="The garment in words">
      <header><h2>In words</h2></header>
      <div className="details-grid">
        <Field label="Number">{(tie) => <SettledInput {...tie} required maxLength={100} value={garment.garment} read={(typed) => typed.trim() || null} onSettle={(number) => set({garment: number})} />}</Field>
        <Field label="Title">{(tie) => <input {...tie} maxLength={300} value={garment.title ?? ""} onChange={({target}) => set({title: target.value || undefined})} />}</Field>
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
