// Everything of a state beside its flaws: wear, cleanliness, patterns of wear, alterations, what is missing.
import {useId} from "react";
import {thingName} from "../../state/grade.ts";
import type {State} from "../../state/model.ts";
import {cleans, wears, type GradeRule} from "../../state/rule.ts";
import {capital} from "./measure-figure.tsx";

export interface WearSectionProps {
  readonly state: State;
  readonly rule: GradeRule;
  onChange(part: Partial<State>): void;
}

export function WearSection({state, rule, onChange}: WearSectionProps) {
  const alterations = state.alterations.map(({kind}) => kind);
  return (
    <section aria-label="Wear and what was done" className="wear-part">
      <header><h2>Wear and what was done</h2></header>
      <OneOf legend="Wear" of={wears} at={state.wear} onPick={(wear) => onChange({wear})} />
      <OneOf legend="Cleanliness" of={cleans} at={state.clean} onPick={(clean) => onChange({clean})} />
      <Several legend="Altered" of={rule.alterations} picked={alterations} onPick={(kinds) => onChange({alterations: kinds.map((kind) => state.alterations.find((one) => one.kind === kind) ?? {kind, place: "", note: ""})})} />
      {state.alterations.map((alteration, i) => (
        <label key={alteration.kind} className="alteration-note">
          <span className="quiet">{capital(thingName(rule.alterations, alteration.kind))}</span>
          <input aria-label={`Note on ${thingName(rule.alterations, alteration.kind)}`} placeholder="where, how, when" maxLength={500} value={alteration.note} onChange={({target}) => onChange({alterations: state.alterations.map((one, at) => (at === i ? {...one, note: target.value} : one))})} />
        </label>
      ))}
      <Several legend="Missing" of={rule.missing} picked={state.missing} onPick={(missing) => onChange({missing: [...missing]})} />
      <Several legend="Pattern of wear" of={rule.fading} picked={state.fading} onPick={(fading) => onChange({fading: [...fading]})} />
    </section>
  );
}

function OneOf<T extends string>({legend, of, at, onPick}: {readonly legend: string; readonly of: readonly T[]; readonly at: T | null; onPick(one: T | null): void}) {
  const name = useId();
  return (
    <fieldset className="ticks">
      <legend>{legend}</legend>
      {of.map((one) => <label key={one}><input type="radio" name={name} checked={at === one} onChange={() => onPick(one)} /> {one}</label>)}
      <label><input type="radio" name={name} checked={at === null} onChange={() => onPick(null)} /> not said</label>
    </fieldset>
  );
}

function Several({legend, of, picked, onPick}: {readonly legend: string; readonly of: readonly {readonly kind: string; readonly name: string}[]; readonly picked: readonly string[]; onPick(kinds: readonly string[]): void}) {
  // What was noted by an earlier rule stays to be seen.
  const all = [...of, ...picked.filter((kind) => !of.some((one) => one.kind === kind)).map((kind) => ({kind, name: kind.replaceAll("-", " ")}))];
  return (
    <details className="several" open={picked.length > 0}>
      <summary>{legend}: <b>{picked.length === 0 ? "nothing noted" : picked.map((kind) => thingName(of, kind)).join(", ")}</b></summary>
      <fieldset className="ticks">
        <legend className="unseen">{legend}</legend>
        {all.map(({kind, name}) => <label key={kind}><input type="checkbox" checked={picked.includes(kind)} onChange={({target}) => onPick(target.checked ? [...picked, kind] : picked.filter((one) => one !== kind))} /> {name}</label>)}
      </fieldset>
    </details>
  );
}
