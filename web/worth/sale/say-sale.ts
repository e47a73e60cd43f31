// A sale in words.
import type {Sale} from "../../../worth/model.ts";
import {capital} from "../say.ts";
import {typeMonth} from "./month-text.ts";

/** "1966 to 1969", "from 1968-03", or nothing. */
export function sayMade({madeFrom, madeUntil}: Pick<Sale, "madeFrom" | "madeUntil">): string {
  const [from, until] = [typeMonth(madeFrom, "from"), typeMonth(madeUntil, "until")];
  if (from === until) return from;
  if (from === "") return `until ${until}`;
  return until === "" ? `from ${from}` : `${from} to ${until}`;
}

/** "Trousers by Marrowfield, lot 418" */
export function sayWhat({kind, maker, lot}: Pick<Sale, "kind" | "maker" | "lot">, makerName: (maker: string) => string): string {
  return [`${capital(kind)}${maker === null ? "" : ` by ${makerName(maker)}`}`, lot === null ? "" : `lot ${lot}`].filter((part) => part !== "").join(", ");
}
