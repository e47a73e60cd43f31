// One sale to be written down or changed, on a sheet over the list; what is typed is kept on this device until it is saved.
import {useId, useState, type FormEvent, type ReactNode} from "react";
import type {Problem} from "../../../engine/problem.ts";
import {grades} from "../../../state/model.ts";
import type {SalePage} from "../../../store/model.ts";
import type {Sale, SaleRecord} from "../../../worth/model.ts";
import {Button} from "../../ui/button.tsx";
import {Dialog} from "../../ui/dialog.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {AmountField} from "../amount-field.tsx";
import {useDraft} from "../use-draft.ts";
import {readSale, typeSale, type Makers, type SaleEntry} from "./sale-entry.ts";

export interface SaleSheetProps {
  /** Null: a new one. */
  readonly record: SaleRecord | null;
  readonly blank: SaleEntry;
  readonly today: string;
  readonly makers: Makers;
  readonly values: SalePage["values"];
  /** Problems of a save that was refused. */
  readonly onSave: (sale: Sale) => Promise<readonly Problem[]>;
  readonly onTakeOut: () => void;
  readonly onClose: () => void;
}

const usualKinds = ["trousers", "jacket", "shirt", "overalls", "sweatshirt", "tee"];

export function SaleSheet({record, blank, today, makers, values, onSave, onTakeOut, onClose}: SaleSheetProps) {
  const lists = useId();
  const {value: entry, touched, set: change, drop} = useDraft<SaleEntry>(`ticking.sale.${record?.id ?? "new"}`, record?.rev ?? 0, () => (record ? typeSale(record.sale, makers) : blank));
  const [pressed, setPressed] = useState(false);
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const {sale, slips} = readSale(entry, makers, today);
  const set = (key: keyof SaleEntry) => (text: string) => {
    setRefused([]);
    change({[key]: text});
  };
  // What is still empty is no slip until it is meant to be saved.
  const slip = (key: keyof SaleEntry) => (pressed || entry[key] !== "" ? (slips[key] ?? null) : null);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setPressed(true);
    if (!sale) return;
    setBusy(true);
    const problems = await onSave(sale);
    setBusy(false);
    setRefused(problems);
    if (problems.length === 0) drop();
  };
  const text = (key: keyof SaleEntry, label: string, more: {hint?: ReactNode; list?: string; type?: string; maxLength?: number} = {}) => (
    <Field label={label} hint={more.hint} wrong={slip(key)}>
      {(tie) => <input {...tie} type={more.type ?? "text"} max={more.type === "date" ? today : undefined} maxLength={more.maxLength ?? 200} list={more.list && `${lists}-${more.list}`} value={entry[key]} onChange={({target}) => set(key)(target.value)} />}
    </Field>
  );
  return (
    <Dialog title={record ? "A sale" : "Write a sale down"} wide onClose={onClose}>
      <form className="sale-form" noValidate onSubmit={(event) => void submit(event)}>
        <div className="worth-fields">
          {text("soldOn", "Sold on", {type: "date"})}
          <AmountField label="Price" hint="paid for the garment, postage apart" text={entry.price} currency={entry.currency} onText={set("price")} onCurrency={set("currency")} wrong={slip("price") ?? slip("currency")} />
          {text("kind", "Kind of garment", {list: "kinds"})}
          {text("maker", "Maker", {hint: "empty when not known", list: "makers"})}
          {text("madeFrom", "Made from", {hint: "a year, or 1968-03", maxLength: 12})}
          {text("madeUntil", "Made until", {hint: "the same year again when it is sure", maxLength: 12})}
          {text("size", "Size", {hint: "as it would be said: W 34 L 32, M"})}
          <Field label="Grade">
            {(tie) => <select {...tie} value={entry.grade} onChange={({target}) => set("grade")(target.value)}><option value="">not known</option>{grades.map((one) => <option key={one}>{one}</option>)}</select>}
          </Field>
          {text("lot", "Lot")}
          {text("channel", "Sold through", {hint: "market stall, own shop, auction", list: "channels"})}
          <AmountField label="Fees" hint="what the channel kept; empty when not known" text={entry.fees} currency={entry.currency} onText={set("fees")} wrong={slip("fees")} />
        </div>
        <Field label="Note">{(tie) => <textarea {...tie} rows={2} maxLength={2000} value={entry.note} onChange={({target}) => set("note")(target.value)} />}</Field>
        <datalist id={`${lists}-kinds`}>{[...new Set([...values.kinds, ...usualKinds])].map((one) => <option key={one} value={one} />)}</datalist>
        <datalist id={`${lists}-makers`}>{[...new Set([...makers.values(), ...values.makers.map((one) => makers.get(one) ?? one)])].map((one) => <option key={one} value={one} />)}</datalist>
        <datalist id={`${lists}-channels`}>{values.channels.map((one) => <option key={one} value={one} />)}</datalist>
        <ProblemList problems={refused} />
        {pressed && !sale && <p role="alert" className="slip-note">{Object.keys(slips).length === 1 ? "One field has" : `${Object.keys(slips).length} fields have`} to be mended first.</p>}
        <p className="worth-line">
          <Button look="main" type="submit" disabled={busy}>{record ? "Save the sale" : "Write it down"}</Button>
          {touched && <Button look="quiet" onClick={() => (drop(), onClose())}>Throw away what was typed</Button>}
          {record && <Button look="away" className="worth-end" onClick={onTakeOut}>Take it out</Button>}
        </p>
      </form>
    </Dialog>
  );
}
