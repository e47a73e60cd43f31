// What a garment has cost so far: bought for how much and when, what went into it, and what is asked for it now.
import {useState, type FormEvent} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {GarmentRecord} from "../../../store/model.ts";
import {send} from "../../offline/send.ts";
import {problemsOf} from "../../api.ts";
import {Button} from "../../ui/button.tsx";
import {Dialog} from "../../ui/dialog.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {AmountField} from "../amount-field.tsx";
import {useDraft} from "../use-draft.ts";
import {readStory, typeStory, type CostEntry, type StoryEntry} from "./story-entry.ts";

export interface StorySheetProps {
  readonly record: GarmentRecord;
  readonly currency: string;
  readonly today: string;
  readonly onSaved: (record: GarmentRecord) => void;
  readonly onClose: () => void;
}

export function StorySheet({record, currency, today, onSaved, onClose}: StorySheetProps) {
  // What it is saved on top of; somebody else may save in between.
  const [ground, setGround] = useState(record);
  const {value: entry, touched, set, drop} = useDraft<StoryEntry>(`ticking.story.${record.id}`, record.rev, () => typeStory(record.content, currency));
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const {part, slips} = readStory(entry, ground.content, today);
  const setCost = (at: number, more: Partial<CostEntry>) => set({costs: entry.costs.map((cost, i) => (i === at ? {...cost, ...more} : cost))});
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!part) return;
    setBusy(true);
    const kept = await send({garment: record.id, base: ground.rev, was: ground.content, content: {...ground.content, ...part}, what: "costs changed"}, false);
    setBusy(false);
    if (kept.saved) {
      drop();
      return onSaved(kept.saved);
    }
    if (kept.conflict) setGround(kept.conflict.now);
    setProblems(kept.problems ?? (kept.conflict ? [changedBetween] : problemsOf(null)));
  };
  const day = (key: "boughtOn" | "listedOn", label: string) => <Field label={label} wrong={slips[key] ?? null}>{(tie) => <input {...tie} type="date" max={today} value={entry[key]} onChange={({target}) => set({[key]: target.value})} />}</Field>;
  return (
    <Dialog title="What it has cost" wide onClose={onClose}>
      <form className="sale-form" noValidate onSubmit={(event) => void submit(event)}>
        <div className="worth-fields">
          <AmountField label="Paid" text={entry.paid} currency={entry.currency} onText={(paid) => set({paid})} onCurrency={(code) => set({currency: code})} />
          {day("boughtOn", "Bought on")}
          <AmountField label="You ask" hint="what it is listed at" text={entry.asked} currency={entry.currency} onText={(asked) => set({asked})} />
          {day("listedOn", "Listed on")}
        </div>
        <fieldset className="costs">
          <legend>What went into it</legend>
          {entry.costs.map(({what, amount, on}, i) => (
            <div key={i} className="cost">
              <Field label="What for" wrong={slips.costs[i] ?? null}>{(tie) => <input {...tie} maxLength={200} placeholder="cleaning, mending, travel" value={what} onChange={({target}) => setCost(i, {what: target.value})} />}</Field>
              <AmountField label="How much" text={amount} currency={entry.currency} onText={(text) => setCost(i, {amount: text})} />
              <Field label="On">{(tie) => <input {...tie} type="date" max={today} value={on} onChange={({target}) => setCost(i, {on: target.value})} />}</Field>
              <Button look="quiet" onClick={() => set({costs: entry.costs.filter((_, other) => other !== i)})}>Take out<span className="unseen"> cost {i + 1}</span></Button>
            </div>
          ))}
          <p><Button onClick={() => set({costs: [...entry.costs, {what: "", amount: "", on: today}]})}>Add a cost</Button></p>
        </fieldset>
        <ProblemList problems={problems} />
        <p className="worth-line"><Button look="main" type="submit" disabled={busy || part === null}>Save</Button> {touched && <Button look="quiet" onClick={() => (drop(), onClose())}>Throw away what was typed</Button>}</p>
      </form>
    </Dialog>
  );
}

const changedBetween: Problem = {code: "screen/changed-between", at: "this garment", what: "somebody else saved it in between", why: "what is typed here would take the place of their costs and prices", fix: "save once more when that is meant; their other changes stay"};
