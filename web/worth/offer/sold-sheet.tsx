// Marks a garment as sold: from then on its sale is one of those that prices are learned from.
import {useState, type FormEvent} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {GarmentRecord} from "../../../store/model.ts";
import {problemsOf, sendJson} from "../../api.ts";
import {Button} from "../../ui/button.tsx";
import {Dialog} from "../../ui/dialog.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {AmountField} from "../amount-field.tsx";
import {readAmount, typeAmount} from "../money.ts";

export interface SoldSheetProps {
  readonly record: GarmentRecord;
  readonly currency: string;
  readonly today: string;
  readonly onSold: (record: GarmentRecord) => void;
  readonly onClose: () => void;
}

export function SoldSheet({record, currency: usual, today, onSold, onClose}: SoldSheetProps) {
  const {asked, money} = record.content;
  const [on, setOn] = useState(today);
  const [currency, setCurrency] = useState(asked?.currency ?? usual);
  const [texts, setTexts] = useState({price: asked ? typeAmount(asked) : "", fees: "", postage: ""});
  const [channel, setChannel] = useState("");
  const [pressed, setPressed] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const [price, fees, postage] = [readAmount(texts.price, currency), readAmount(texts.fees, currency), readAmount(texts.postage, currency)];
  const slips = {
    on: on === "" ? "The day it was sold" : on > today ? "That day lies ahead" : money?.boughtOn && on < money.boughtOn ? "Before it was bought" : null,
    price: price.cents ? null : "What the buyer paid for it",
    fees: fees.cents !== null && price.cents !== null && fees.cents > price.cents ? "More than was paid for it" : null,
  };
  const good = !slips.on && !slips.price && !slips.fees && !price.wrong && !fees.wrong && !postage.wrong;
  const set = (key: keyof typeof texts) => (text: string) => setTexts((was) => ({...was, [key]: text}));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setPressed(true);
    if (!good) return;
    setBusy(true);
    const amount = (cents: number | null) => (cents === null ? {} : {cents, currency});
    const body = {base: record.rev, on, price: amount(price.cents), ...(fees.cents !== null && {fees: amount(fees.cents)}), ...(postage.cents !== null && {postage: amount(postage.cents)}), channel: channel.trim()};
    try {
      onSold(await sendJson<GarmentRecord>("POST", `/api/garments/${record.id}/sold`, body));
    } catch (error) {
      setProblems(problemsOf(error));
    }
    setBusy(false);
  };
  return (
    <Dialog title="Sold" onClose={onClose}>
      <form className="sale-form" noValidate onSubmit={(event) => void submit(event)}>
        <div className="worth-fields">
          <Field label="Sold on" wrong={slips.on}>{(tie) => <input {...tie} type="date" max={today} value={on} onChange={({target}) => setOn(target.value)} />}</Field>
          <AmountField label="Price" hint="paid for the garment, postage apart" text={texts.price} currency={currency} onText={set("price")} onCurrency={setCurrency} wrong={pressed ? slips.price : null} />
          <AmountField label="Fees" hint="what the channel kept" text={texts.fees} currency={currency} onText={set("fees")} wrong={slips.fees} />
          <AmountField label="Postage" hint="paid by you" text={texts.postage} currency={currency} onText={set("postage")} />
          <Field label="Sold through" hint="market stall, own shop, auction">{(tie) => <input {...tie} maxLength={200} value={channel} onChange={({target}) => setChannel(target.value)} />}</Field>
        </div>
        <ProblemList problems={problems} />
        <p className="worth-line"><Button look="main" type="submit" disabled={busy}>Mark as sold</Button> <Button look="quiet" onClick={onClose}>Not sold yet</Button></p>
      </form>
    </Dialog>
  );
}
