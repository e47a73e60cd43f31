// A text field that may be wrong for a moment while it is typed in: only what can stand is handed on, and leaving it shows what stands.
import {useState, type InputHTMLAttributes} from "react";

export interface SettledInputProps extends Omit<InputHTMLAttributes<HTMLInputElement>, "value" | "onChange"> {
  readonly value: string;
  /** What is typed as it will stand; null while it cannot. */
  readonly read: (typed: string) => string | null;
  readonly onSettle: (value: string) => void;
}

export function SettledInput({value, read, onSettle, ...rest}: SettledInputProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <input
      {...rest}
      value={typed ?? value}
      onChange={({target}) => {
        setTyped(target.value);
        const settled = read(target.value);
        if (settled !== null && settled !== value) onSettle(settled);
      }}
      onBlur={() => setTyped(null)}
    />
  );
}
