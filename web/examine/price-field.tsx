// An amount of money with its currency; what is typed stays as typed until it is left.
import {useState} from "react";
import type {Money} from "../../store/model.ts";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";

export interface PriceProps {
  readonly label: string;
  readonly money: Money | null;
  onMoney(money: Money | null): void;
}

export function PriceField({label, money, onMoney}: PriceProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [usual, setUsual] = useState(() => localStorage.getItem("ticking.currency") ?? "EUR");
  const currency = money?.currency ?? usual;
  const shown = typed ?? (money ? (money.cents / 100).toFixed(2) : "");
  const wrong = typed !== null && typed !== "" && centsOf(typed) === null ? "An amount like 120 or 120.50" : null;
  return (
    <Field label={label} wrong={wrong}>
      {(tie) => (
        <span className="price">
          <input
            {...tie}
            inputMode="decimal"
            value={shown}
            onChange={({target}) => {
              setTyped(target.value);
              const cents = centsOf(target.value);
              if (target.value === "") onMoney(null);
              else if (cents !== null) onMoney({cents, currency});
            }}
            onBlur={() => wrong === null && setTyped(null)}
          />
          <SettledInput
            aria-label={`${label}, currency`}
            maxLength={3}
            size={4}
            value={currency}
            read={(word) => (/^[a-z]{3}$/i.test(word) ? word.toUpperCase() : null)}
            onSettle={(code) => {
              localStorage.setItem("ticking.currency", code);
              setUsual(code);
              if (money) onMoney({...money, currency: code});
            }}
          />
        </span>
      )}
    </Field>
  );
}

/** Null when it is no amount. */
function centsOf(text: string): number | null {
  const plain = text.trim().replace(",", ".");
  if (!/^\d{1,9}(\.\d{0,2})?$/.test(plain)) return null;
  return Math.round(Number(plain) * 100);
}
