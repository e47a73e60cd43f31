// An amount of money with its currency; what is typed stays as typed until it is left.
import {useState} from "react";
import type {Money} from "../../store/model.ts";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";
import {readAmount, typeAmount} from "../worth/money.ts";

export interface PriceProps {
  readonly label: string;
  readonly money: Money | null;
  onMoney(money: Money | null): void;
}

export function PriceField({label, money, onMoney}: PriceProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [usual, setUsual] = useState(() => localStorage.getItem("ticking.currency") ?? "EUR");
  const currency = money?.currency ?? usual;
  const shown = typed ?? (money ? typeAmount(money) : "");
  const wrong = typed === null ? null : readAmount(typed, currency).wrong;
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
              const {cents, wrong: slip} = readAmount(target.value, currency);
              if (slip === null) onMoney(cents === null ? null : {cents, currency});
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
