// A whole number of points, or any other plain number, with its name above it.
import {SettledInput} from "../ui/settled-input.tsx";
import {Field} from "../ui/field.tsx";

export interface PointsFieldProps {
  readonly label: string;
  readonly value: number;
  readonly most?: number;
  /** Figures behind the point. */
  readonly figures?: number;
  readonly hint?: string;
  onValue(value: number): void;
}

export function PointsField({label, value, most = 100, figures = 0, hint, onValue}: PointsFieldProps) {
  const form = figures === 0 ? /^\d{1,4}$/ : new RegExp(`^\\d{1,4}(?:\\.\\d{1,${figures}})?$`);
  const read = (typed: string) => {
    const plain = typed.trim().replace(",", ".");
    return form.test(plain) && Number(plain) <= most ? String(Number(plain)) : null;
  };
  return <Field label={label} hint={hint}>{(tie) => <SettledInput {...tie} inputMode={figures === 0 ? "numeric" : "decimal"} value={String(value)} read={read} onSettle={(typed) => onValue(Number(typed))} />}</Field>;
}
