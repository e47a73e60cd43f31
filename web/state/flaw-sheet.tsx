// One flaw: what it is, how bad, how large, where, mended or not. It is noted as soon as its kind is said.
import {useId, useState} from "react";
import type {GarmentKind} from "../../state/garment-kind.ts";
import {readLength, sayMm, toMm} from "../../state/length.ts";
import {severities, type Flaw} from "../../state/model.ts";
import {placesOf} from "../../state/place.ts";
import type {GradeRule} from "../../state/rule.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {Field} from "../ui/field.tsx";
import {capital} from "./measure-figure.tsx";
import {useTapeUnit} from "./use-tape-unit.ts";

export interface FlawSheetProps {
  /** Its kind is empty while it is not said. */
  readonly flaw: Flaw;
  readonly kind: GarmentKind;
  readonly rule: GradeRule;
  readonly points: number | null;
  onChange(flaw: Flaw): void;
  onRemove(): void;
  onClose(): void;
}

const severityWords = {slight: "slight: seen when looked for", plain: "plain: seen at arm's length", heavy: "heavy: seen from across the room, or it weakens the cloth"} as const;

export function FlawSheet({flaw, kind, rule, points, onChange, onRemove, onClose}: FlawSheetProps) {
  const name = useId();
  const [unit] = useTapeUnit();
  const [size, setSize] = useState(flaw.size === null ? "" : sayMm(flaw.size, unit));
  const set = (part: Partial<Flaw>) => onChange({...flaw, ...part});
  const read = readLength({typed: size || "-", unit});
  const kinds = [...rule.flaws, ...(flaw.kind !== "" && !rule.flaws.some((one) => one.kind === flaw.kind) ? [{kind: flaw.kind, name: flaw.kind}] : [])];
  return (
    <Dialog title={`${flaw.kind === "" ? "What is wrong" : capital(rule.flaws.find((one) => one.kind === flaw.kind)?.name ?? flaw.kind)}${flaw.place ? ` at the ${flaw.place}` : ""}`} onClose={onClose} wide>
      <fieldset className="ticks">
        <legend>Kind{flaw.kind === "" && <span className="quiet"> · say what it is, and it is noted</span>}</legend>
        {kinds.map((one) => <label key={one.kind}><input type="radio" name={`${name}-kind`} checked={flaw.kind === one.kind} onChange={() => set({kind: one.kind})} /> {one.name}</label>)}
      </fieldset>
      <fieldset className="ticks lines">
        <legend>How bad</legend>
        {severities.map((one) => <label key={one}><input type="radio" name={`${name}-severity`} checked={flaw.severity === one} onChange={() => set({severity: one})} /> {severityWords[one]}</label>)}
      </fieldset>
      <label className="one-tick"><input type="checkbox" checked={flaw.mended} onChange={({target}) => set({mended: target.checked})} /> mended</label>
      <div className="details-grid">
        <Field label="Side">
          {(tie) => <select {...tie} value={flaw.side} onChange={({target}) => set({side: target.value as Flaw["side"], x: null, y: null})}>{(["front", "back", "inside"] as const).map((one) => <option key={one}>{one}</option>)}</select>}
        </Field>
        <Field label="Place">
          {(tie) => (
            <>
              <input {...tie} list={`${name}-places`} maxLength={200} value={flaw.place} onChange={({target}) => set({place: target.value})} />
              <datalist id={`${name}-places`}>{placesOf(kind, flaw.side).map((one) => <option key={one} value={one} />)}</datalist>
            </>
          )}
        </Field>
        <Field label="Longest extent" hint={`as on the tape, like ${unit === "in" ? "3/4" : "2"} ${unit}`} wrong={size.trim() !== "" && !read ? "This is no length" : null}>
          {(tie) => <input {...tie} maxLength={20} value={size} onChange={({target}) => {
            setSize(target.value);
            const length = readLength({typed: target.value || "-", unit});
            if (target.value.trim() === "" || length) set({size: length ? Math.min(2000, toMm(length)) : null});
          }} />}
        </Field>
        <Field label="Note">{(tie) => <input {...tie} maxLength={500} value={flaw.note} onChange={({target}) => set({note: target.value})} />}</Field>
      </div>
      <p className="flaw-ways">
        <Button look="main" onClick={onClose}>Done</Button>
        {points !== null && <Button look="away" onClick={onRemove}>Take it out</Button>}
        <span className="quiet">{points === null ? "Not noted yet." : `Costs ${points} ${points === 1 ? "point" : "points"} by the rule.`}</span>
      </p>
    </Dialog>
  );
}
