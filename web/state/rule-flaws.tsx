// What each kind of flaw costs, folded to a line each.
import {severities} from "../../state/model.ts";
import type {FlawRule} from "../../state/rule.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {AddKind} from "./add-kind.tsx";
import {GradeChoice} from "./grade-choice.tsx";
import {capital} from "./measure-figure.tsx";
import {PointsField} from "./points-field.tsx";
import {kindFor, withEntry} from "./rule-kinds.ts";

export function RuleFlaws({flaws, onChange}: {readonly flaws: readonly FlawRule[]; onChange(flaws: FlawRule[]): void}) {
  return (
    <section aria-label="Flaws of the rule">
      <header><h2>Flaws</h2><span className="quiet">points when slight, plain, heavy</span></header>
      {flaws.map((flaw, i) => <FlawLine key={flaw.kind} flaw={flaw} onChange={(next) => onChange(withEntry(flaws, i, next))} />)}
      <AddKind label="Another kind of flaw" onAdd={(name) => onChange([...flaws, {kind: kindFor(name, flaws.map(({kind}) => kind)), name, slight: 2, plain: 5, heavy: 12, mended: 0.5, large: null, cap: null}])} />
    </section>
  );
}

function FlawLine({flaw, onChange}: {readonly flaw: FlawRule; onChange(flaw: FlawRule | null): void}) {
  const {name, slight, plain, heavy, mended, large, cap} = flaw;
  const set = (part: Partial<FlawRule>) => onChange({...flaw, ...part});
  return (
    <details className="rule-line">
      <summary><span>{capital(name)}</span><span className="quiet">{slight}, {plain}, {heavy}{cap && ` · ${cap.from}${cap.from === "heavy" ? "" : " or worse"}: ${cap.grade} at best`}</span></summary>
      <div className="rule-fields">
        <Field label="Name">{(tie) => <input {...tie} maxLength={200} value={name} onChange={({target}) => set({name: target.value})} />}</Field>
        {severities.map((severity) => <PointsField key={severity} label={capital(severity)} value={flaw[severity]} onValue={(points) => set({[severity]: points})} />)}
        <PointsField label="% left mended" value={Math.round(mended * 100)} onValue={(percent) => set({mended: percent / 100})} />
        <PointsField label="Large from mm" value={large?.from ?? 0} most={2000} onValue={(from) => set({large: from === 0 ? null : {from, times: large?.times ?? 1.5}})} />
        {large && <PointsField label="Large counts times" value={large.times} most={10} figures={1} onValue={(times) => set({large: {...large, times: Math.max(1, times)}})} />}
        <GradeChoice label="No better than" grade={cap?.grade ?? null} onGrade={(grade) => set({cap: grade && {from: cap?.from ?? "heavy", grade}})} />
        {cap && <Field label="when at least">{(tie) => <select {...tie} value={cap.from} onChange={({target}) => set({cap: {...cap, from: target.value as typeof cap.from}})}>{severities.map((one) => <option key={one}>{one}</option>)}</select>}</Field>}
      </div>
      <p className="quiet">Mended, so many parts in a hundred of its points stay. Large from 0 mm: its size does not count.</p>
      <Button look="quiet" onClick={() => onChange(null)}>Take {name} out of the rule</Button>
    </details>
  );
}
