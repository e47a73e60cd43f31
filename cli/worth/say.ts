// Amounts and times of making in words, for the terminal.
import {printMoney} from "../../worth/index.ts";
import type {Amount, Sale} from "../../worth/model.ts";

export const sayAmount = ({cents, currency}: Amount) => printMoney(cents, currency);

/** "made 1966 to 1969", "made 1968", "made until 1969"; empty when nothing is known. */
export function sayMade({madeFrom, madeUntil}: Pick<Sale, "madeFrom" | "madeUntil">): string {
  const [from, until] = [madeFrom?.slice(0, 4), madeUntil?.slice(0, 4)];
  if (from && until) return from === until ? `made ${from}` : `made ${from} to ${until}`;
  return from ? `made ${from} or later` : until ? `made until ${until}` : "";
}

/** 0.25 is "25 %". */
export const sayPart = (part: number) => `${Math.round(100 * part)} %`;
