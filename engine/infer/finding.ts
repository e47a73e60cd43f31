// The finding: everything that an examination answers, as plain data.
import type {Probability, MonthIndex, Bits} from "../units.ts";
import type {CredibleSet} from "../range/credible.ts";
import type {Share} from "../range/groups.ts";
import type {LedgerLine, PieceLine} from "../explain/ledger.ts";
import type {TwoDates} from "../explain/two-dates.ts";
import type {NextLook} from "../next/look.ts";
import type {RowReadings} from "./readings.ts";
import type {Cite, Source} from "../rule/schema.ts";

/** A rule that took part, with its authority. */
export interface RuleUsed {
  readonly mark: string;
  /** What was seen, in words. */
  readonly seen: string;
  readonly name: string;
  readonly says: string | null;
  readonly book: string;
  readonly edition: number;
  readonly source: Source | null;
  readonly cite: Cite;
  /** The months of its window in words; null for numbers and texts. */
  readonly window: string | null;
  readonly caution: string | null;
}

/** A number or text that carries no possible date, and why. */
export interface Unread {
  readonly mark: string;
  readonly text: string;
  readonly why: string;
}

export interface OddMark {
  readonly id: string;
  readonly says: string;
  readonly probability: Probability;
  readonly piece: boolean;
}

export interface Brief {
  readonly garment: string;
  /** First month of the axis; `posterior` runs month by month from there. */
  readonly first: MonthIndex;
  readonly posterior: Float64Array;
  readonly best: {readonly month: MonthIndex; readonly probability: Probability};
  readonly sets: readonly CredibleSet[];
  readonly noEarlier: MonthIndex;
  readonly noLater: MonthIndex;
  readonly makers: readonly {readonly maker: string | null; readonly probability: Probability}[];
  readonly entropy: Bits;
  readonly years: readonly Share[];
  readonly decades: readonly Share[];
}

export interface Finding extends Brief {
  readonly rows: readonly RowReadings[];
  readonly unread: readonly Unread[];
  readonly ledger: readonly LedgerLine[];
  readonly pieces: readonly PieceLine[];
  readonly odd: readonly OddMark[];
  readonly twoDates: TwoDates | null;
  readonly next: readonly NextLook[];
  readonly rules: readonly RuleUsed[];
}
