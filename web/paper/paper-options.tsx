// How a paper is wanted: its size, its photos, the format of tags, the form of a listing.
import {tagFormats} from "../../commands/paper/tag-format.ts";
import {Field} from "../ui/field.tsx";
import type {Wish} from "./address.ts";

export function PaperOptions({wish, onChange}: {readonly wish: Wish; readonly onChange: (part: Partial<Wish>) => void}) {
  const {what, size, photos, worth, format, code, price, form} = wish;
  return (
    <section className="paper-options" aria-label="How">
      <h2>How</h2>
      {what !== "listing" && (
        <Field label="Page">{(tie) => <select {...tie} value={size ?? "a4"} onChange={({target}) => onChange({size: target.value as Wish["size"]})}><option value="a4">A4</option><option value="letter">Letter</option></select>}</Field>
      )}
      {what === "sheet" && (
        <Field label="Photos">{(tie) => <select {...tie} value={photos} onChange={({target}) => onChange({photos: Number(target.value)})}>{[0, 1, 2, 4, 6, 9, 12].concat([0, 1, 2, 4, 6, 9, 12].includes(photos) ? [] : [photos]).sort((a, b) => a - b).map((count) => <option key={count} value={count}>{count === 0 ? "none" : count === 1 ? "the first" : `the first ${count}`}</option>)}</select>}</Field>
      )}
      {what === "sheet" && <label className="tick"><input type="checkbox" checked={worth} onChange={({target}) => onChange({worth: target.checked})} /> with what it may be worth</label>}
      {what === "tags" && (
        <>
          <Field label="Tag">{(tie) => <select {...tie} value={format} onChange={({target}) => onChange({format: target.value})}>{tagFormats.map(({id, name}) => <option key={id} value={id}>{name}</option>)}</select>}</Field>
          <Field label="The number as" hint={code === "bars" ? "A number that bars cannot hold becomes a square code." : undefined}>
            {(tie) => <select {...tie} value={code} onChange={({target}) => onChange({code: target.value as Wish["code"]})}><option value="qr">square code</option><option value="bars">bars</option></select>}
          </Field>
          <label className="tick"><input type="checkbox" checked={price} onChange={({target}) => onChange({price: target.checked})} /> with the price asked</label>
        </>
      )}
      {what === "listing" && (
        <Field label="Form">{(tie) => <select {...tie} value={form} onChange={({target}) => onChange({form: target.value as Wish["form"]})}><option value="plain">plain text</option><option value="markdown">Markdown</option><option value="json">data for search engines (schema.org)</option></select>}</Field>
      )}
    </section>
  );
}
