// A field for an amount of money: typed as people write it, told at once when it is none, tidied when it is left.
import type {ReactNode} from "react";
import {digitsOf} from "../../worth/money/currencies.ts";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";
import {readAmount, typeAmount} from "./money.ts";

export interface AmountFieldProps {
  readonly label: string;
  readonly hint?: ReactNode;
  /** As typed. */
  readonly text: string;
  readonly currency: string;
  readonly onText: (text: string) => void;
  /** Left out: the currency is given. */
  readonly onCurrency?: (currency: string) => void;
  /** Something else that is wrong with it, such as that it is missing. */
  readonly wrong?: string | null | undefined;
}

export function AmountField({label, hint, text, currency, onText, onCurrency, wrong = null}: AmountFieldProps) {
  const read = readAmount(text, currency);
  return (
    <Field label={label} hint={hint} wrong={read.wrong ?? wrong}>
      {(tie) => (
        <span className="amount">
          <input {...tie} inputMode="decimal" autoComplete="off" maxLength={30} value={text} onChange={({target}) => onText(target.value)} onBlur={() => read.cents !== null && onText(typeAmount({cents: read.cents, currency}))} />
          {onCurrency ? (
            <SettledInput aria-label={`${label}, currency`} maxLength={3} size={4} value={currency} read={(word) => (digitsOf(word.toUpperCase()) !== null ? word.toUpperCase() : null)} onSettle={onCurrency} />
          ) : (
            <span className="quiet">{currency}</span>
          )}
        </span>
      )}
    </Field>
  );
}
