// What alterations and missing parts cost, folded to a line each.
import type {ThingRule} from "../../state/rule.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {AddKind} from "./add-kind.tsx";
import {GradeChoice} from "./grade-choice.tsx";
import {capital} from "./measure-figure.tsx";
import {PointsField} from "./points-field.tsx";
import {kindFor, withEntry} from "./rule-kinds.ts";

export interface RuleThingsProps {
  readonly title: string;
  readonly add: string;
  readonly things: readonly ThingRule[];
  onChange(things: ThingRule[]): void;
}

export function RuleThings({title, add, things, onChange}: RuleThingsProps) {
  return (
    <section aria-label={`${title} of the rule`}>
      <header><h2>{title}</h2></header>
      {things.map((thing, i) => {
        const set = (part: Partial<ThingRule>) => onChange(withEntry(things, i, {...thing, ...part}));
        return (
          <details className="rule-line" key={thing.kind}>
            <summary><span>{capital(thing.name)}</span><span className="quiet">{thing.points}{thing.cap && ` · ${thing.cap} at best`}</span></summary>
            <div className="rule-fields">
              <Field label="Name">{(tie) => <input {...tie} maxLength={200} value={thing.name} onChange={({target}) => set({name: target.value})} />}</Field>
              <PointsField label="Points" value={thing.points} onValue={(points) => set({points})} />
              <GradeChoice label="No better than" grade={thing.cap} onGrade={(cap) => set({cap})} />
            </div>
            <Button look="quiet" onClick={() => onChange(withEntry(things, i, null))}>Take {thing.name} out of the rule</Button>
          </details>
        );
      })}
      <AddKind label={add} onAdd={(name) => onChange([...things, {kind: kindFor(name, things.map(({kind}) => kind)), name, points: 2, cap: null}])} />
    </section>
  );
}
