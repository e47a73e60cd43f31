// The rows of made-up labels: care words, fibres, sizes and numbers, no maker's among them.
import type {Random} from "../simulate/random.ts";

export type RowKind = "care" | "fibre" | "origin" | "size" | "lot" | "plant" | "date" | "registration";

export interface MadeRow {
  readonly kind: RowKind;
  readonly text: string;
}

const care = ["MACHINE WASH WARM", "WASH INSIDE OUT", "WITH LIKE COLORS", "TUMBLE DRY MEDIUM", "DO NOT BLEACH", "COLD WATER ONLY", "WARM IRON IF NEEDED", "REMOVE PROMPTLY", "LINE DRY", "NO CHLORINE BLEACH", "DRY CLEAN ONLY", "WASH SEPARATELY"];
const fibres = ["100% COTTON", "65% POLYESTER", "35% COTTON", "80% COTTON", "20% NYLON", "ALL COTTON", "50% WOOL", "14 OZ COTTON"];

/** Rows of one label, a care row first. */
export function makeRows(random: Random): MadeRow[] {
  const {whole, pick, happens} = random;
  const digits = (count: number) => Array.from({length: count}, () => whole(0, 9)).join("");
  const two = (value: number) => String(value).padStart(2, "0");
  const words: MadeRow[] = random.shuffled(care).slice(0, whole(1, 2)).map((text) => ({kind: "care", text}));
  const rest: MadeRow[] = [
    {kind: "fibre", text: pick(fibres)},
    ...(happens(0.4) ? [{kind: "origin", text: "MADE IN U.S.A."} as const] : []),
    {kind: "size", text: pick([`W ${whole(26, 44)} L ${whole(28, 36)}`, `SIZE ${whole(28, 48)}`, `W${whole(26, 44)} L${whole(28, 36)}`])},
    {kind: "lot", text: pick([`${digits(3)}-${digits(4)}`, `${digits(5)}-${digits(4)}`, `LOT ${digits(3)}-${digits(4)}`])},
    {kind: "plant", text: pick([String(whole(10, 99)), digits(3), `PLANT ${whole(1, 99)}`])},
    {kind: "date", text: pick([`${whole(1, 12)} ${whole(0, 9)}`, `${two(whole(1, 12))}${whole(66, 99)}`, digits(4), `${whole(1, 12)} ${whole(66, 99)}`])},
    ...(happens(0.5) ? [{kind: "registration", text: `RN ${digits(5)}`} as const] : []),
  ];
  return [words[0]!, ...random.shuffled([...words.slice(1), ...rest])];
}
