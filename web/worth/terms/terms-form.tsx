// What the shop wants and what selling costs it: set once, counted in every offer.
import {useState, type FormEvent} from "react";
import type {Terms} from "../../../worth/model.ts";
import {AmountField} from "../amount-field.tsx";
import {Button} from "../../ui/button.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {useDraft} from "../use-draft.ts";
import {readTerms, typeTerms, type TermsEntry} from "./terms-entry.ts";
import type {OpenSetting} from "./use-setting.ts";
import "../worth.css";

export interface TermsFormProps {
  readonly terms: Terms;
  readonly setting: Pick<OpenSetting<Terms>, "rev" | "problems" | "save">;
  /** Called once they are saved. */
  readonly onSaved: () => void;
  /** Called when what was typed is thrown away. */
  readonly onLeft: () => void;
}

export function TermsForm({terms, setting, onSaved, onLeft}: TermsFormProps) {
  const {value: entry, touched, set: change, drop} = useDraft<TermsEntry>("ticking.terms", setting.rev, () => typeTerms(terms));
  const [busy, setBusy] = useState(false);
  const {terms: read, slips} = readTerms(entry);
  const set = (key: keyof TermsEntry) => (text: string) => change({[key]: text});
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!read) return;
    setBusy(true);
    if (await setting.save(read)) {
      drop();
      localStorage.setItem("ticking.currency", read.currency);
      onSaved();
    }
    setBusy(false);
  };
  const part = (key: "margin" | "feeShare" | "taxShare" | "yearlyCost" | "room", label: string, hint: string) => (
    <Field label={label} hint={hint} wrong={slips[key] ?? null}>
      {(tie) => <span className="amount"><input {...tie} inputMode="decimal" maxLength={8} value={entry[key]} onChange={({target}) => set(key)(target.value)} /><span className="quiet">in 100</span></span>}
    </Field>
  );
  const amount = (key: "feeFixed" | "postage" | "cleaning", label: string, hint: string) => <AmountField label={label} hint={hint} text={entry[key]} currency={entry.currency} onText={set(key)} />;
  return (
    <form className="terms" noValidate onSubmit={(event) => void submit(event)}>
      <fieldset>
        <legend>What you want</legend>
        {part("margin", "Margin", "profit out of each 100 of the selling price, tax apart")}
        {part("room", "Room for haggling", "how far above the expected price you list")}
        <Field label="Currency of the shop" hint="ISO 4217, three letters" wrong={slips.currency ?? null}>
          {(tie) => <input {...tie} maxLength={3} autoCapitalize="characters" value={entry.currency} onChange={({target}) => set("currency")(target.value.toUpperCase())} />}
        </Field>
      </fieldset>
      <fieldset>
        <legend>What a sale costs</legend>
        {part("feeShare", "Kept by the channel", "stall, auction or shop you sell through")}
        {amount("feeFixed", "and for each sale", "a fixed fee, 0 when there is none")}
        {amount("postage", "Postage", "when you pay it")}
        {part("taxShare", "Tax inside the price", "your local law and your accountant decide which")}
      </fieldset>
      <fieldset>
        <legend>What waiting costs</legend>
        {amount("cleaning", "Cleaning and mending", "of one garment, as a rule")}
        <Field label="Days until it sells" hint="as a rule, from buying" wrong={slips.daysToSell ?? null}>
          {(tie) => <span className="amount"><input {...tie} inputMode="numeric" maxLength={6} value={entry.daysToSell} onChange={({target}) => set("daysToSell")(target.value)} /><span className="quiet">days</span></span>}
        </Field>
        {part("yearlyCost", "Money tied up for a year", "interest, or what it could earn elsewhere")}
      </fieldset>
      <ProblemList problems={setting.problems} />
      <p className="worth-line"><Button look="main" type="submit" disabled={busy || read === null}>Save the terms</Button>{touched && <Button look="quiet" onClick={() => (drop(), onLeft())}>Throw away what was typed</Button>}</p>
    </form>
  );
}
