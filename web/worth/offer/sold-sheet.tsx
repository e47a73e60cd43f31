// Marks a garment as sold: from then on its sale is one of those that prices are learned from.
import {useState, type FormEvent} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {GarmentRecord} from "../../../store/model.ts";
import {ApiFault, problemsOf, sendJson} from "../../api.ts";
import {Button} from "../../ui/button.tsx";
import {Dialog} from "../../ui/dialog.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {AmountField} from "../amount-field.tsx";
import {readAmount, typeAmount} from "../money.ts";
import {useDraft} from "../use-draft.ts";

export interface SoldSheetProps {
  readonly record: GarmentRecord;
  readonly currency: string;
  readonly today: string;
  readonly onSold: (record: GarmentRecord) => void;
  readonly onClose: () => void;
}

export function SoldSheet({record, currency: usual, today, onSold, onClose}: SoldSheetProps) {
  const {asked, money} = record.content;
  const [base, setBase] = useState(record.rev);
  const {value: entry, touched, set, drop} = useDraft(`ticking.sold.${record.id}`, record.rev, () => ({on: today, currency: asked?.currency ?? usual, price: asked ? typeAmount(asked) : "", fees: "", postage: "", channel: ""}));
  const {on, currency, channel} = entry;
  const [pressed, setPressed] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const [price, fees, postage] = [readAmount(entry.price, currency), readAmount(entry.fees, currency), readAmount(entry.postage, currency)];
  const slips = {
    on: on === "" ? "The day it was sold" : on > today ? "That day lies ahead" : money?.boughtOn && on < money.boughtOn ? "Before it was bought" : null,
    price: price.cents ? null : "What the buyer paid for it",
    fees: fees.cents !== null && price.cents !== null && fees.cents > price.cents ? "More than was paid for it" : null,
  };
  const good = !slips.on && !slips.price && !slips.fees && !price.wrong && !fees.wrong && !postage.wrong;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setPressed(true);
    if (!good) return;
    setBusy(true);
    const amount = (cents: number | null) => (cents === null ? null : {cents, currency});
    const body = {base, on, price: amount(price.cents), fees: amount(fees.cents), postage: amount(postage.cents), channel: channel.trim()};
    try {
      const sold = await sendJson<GarmentRecord>("POST", `/api/garments/${record.id}/sold`, body);
      drop();
      return onSold(sold);
    } catch (error) {
      // Marking it once more goes on top of what somebody else saved in between.
      if (error instanceof ApiFault && error.status === 409) setBase((error.body as {now: GarmentRecord}).now.rev);
      setProblems(problemsOf(error));
    }
    setBusy(false);
  };
  return (
    <Dialog title="Sold" onClose={onClose}>
      <form className="sale-form" noValidate onSubmit={(event) => void submit(event)}>
        <div className="worth-fields">
          <Field label="Sold on" wrong={slips.on}>{(tie) => <input {...tie} type="date" max={today} value={on} onChange={({target}) => set({on: target.value})} />}</Field>
          <AmountField label="Price" hint="paid for the garment, postage apart" text={entry.price} currency={currency} onText={(text) => set({price: text})} onCurrency={(code) => set({currency: code})} wrong={pressed ? slips.price : null} />
          <AmountField label="Fees" hint="what the channel kept" text={entry.fees} currency={currency} onText={(text) => set({fees: text})} wrong={slips.fees} />
          <AmountField label="Postage" hint="paid by you" text={entry.postage} currency={currency} onText={(text) => set({postage: text})} />
          <Field label="Sold through" hint="market stall, own shop, auction">{(tie) => <input {...tie} maxLength={200} value={channel} onChange={({target}) => set({channel: target.value})} />}</Field>
        </div>
        <ProblemList problems={problems} />
        <p className="worth-line"><Button look="main" type="submit" disabled={busy}>Mark as sold</Button> {touched && <Button look="quiet" onClick={() => (drop(), onClose())}>Throw away what was typed</Button>}</p>
      </form>
    </Dialog>
  );
}
