// One point of measure: typed as on the tape, doubled and said in the other unit beside it, with what does not hang together below.
import {useId, type KeyboardEvent} from "react";
import {readLength, sayMm, doubled} from "../../state/length.ts";
import type {TypedLength} from "../../state/model.ts";
import type {SizeDoubt} from "../../state/plausible.ts";
import type {Point} from "../../state/point-shape.ts";
import {capital} from "./measure-figure.tsx";

export interface MeasureFieldProps {
  readonly point: Point;
  readonly length: TypedLength | null;
  /** Of lengths that carry none. */
  readonly unit: TypedLength["unit"];
  readonly doubts: readonly SizeDoubt[];
  onType(typed: string): void;
  onFocus(): void;
  onBlur(): void;
}

export function MeasureField({point, length, unit, doubts, onType, onFocus, onBlur}: MeasureFieldProps) {
  const id = useId();
  const about = `${id}-about`;
  return (
    <li className="measure-field">
      <label htmlFor={id}>{capital(point.name)}{point.flat && <span className="quiet"> laid flat</span>}</label>
      <span className="measure-typed">
        <input id={id} data-point={point.id} value={length?.typed ?? ""} maxLength={20} autoComplete="off" enterKeyHint="next" aria-describedby={about} aria-invalid={doubts.length > 0 || undefined} onChange={({target}) => onType(target.value)} onFocus={onFocus} onBlur={onBlur} onKeyDown={toNext} />
        <span className="quiet" aria-hidden="true">{length?.unit ?? unit}</span>
      </span>
      <span id={about} className="measure-said">
        <span className="quiet">{length && said(point, length)}</span>
        {doubts.map(({problem}) => <span key={problem.code + problem.what} className="measure-doubt"><b>{capital(problem.what)}.</b> {capital(problem.why)}. {capital(problem.fix)}.</span>)}
      </span>
    </li>
  );
}

/** All round where it was laid flat, then in the other unit. */
function said({flat}: Point, typed: TypedLength): string {
  const length = readLength(typed);
  if (!length) return "";
  const whole = flat ? doubled(length) : length;
  const other = length.unit === "in" ? "cm" : "in";
  return flat ? `${sayMm(whole.mm, length.unit)} all round, ${sayMm(whole.mm, other)}` : sayMm(whole.mm, other);
}

/** Enter goes to the next point, with Shift to the one before. */
function toNext(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== "Enter") return;
  event.preventDefault();
  const fields = [...document.querySelectorAll<HTMLInputElement>("input[data-point]")];
  const next = fields[fields.indexOf(event.currentTarget) + (event.shiftKey ? -1 : 1)];
  next?.focus();
  next?.select();
}
