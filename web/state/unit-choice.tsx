// Inches or centimetres.
import {useId} from "react";
import type {TypedLength} from "../../state/model.ts";

const names = {in: "inches", cm: "centimetres"} as const;

export function UnitChoice({unit, onUnit}: {readonly unit: TypedLength["unit"]; onUnit(unit: TypedLength["unit"]): void}) {
  const name = useId();
  return (
    <fieldset className="ticks unit-choice">
      <legend className="unseen">The tape</legend>
      {(["in", "cm"] as const).map((one) => <label key={one}><input type="radio" name={name} checked={unit === one} onChange={() => onUnit(one)} /> {names[one]}</label>)}
    </fieldset>
  );
}
