// What the arithmetic is asked about: a garment with its doubt, a lot of them, and garments as the shop's books need them.
import type {Grade} from "../state/model.ts";
import type {Amount, MoneyStory} from "./model.ts";

/** Probabilities of years in a row. */
export interface YearOdds {
  readonly first: number;
  /** Need not sum to 1: they are scaled. */
  readonly shares: readonly number[];
}

/** A garment to price, as far as it is known. */
export interface Subject {
  /** Its id on the rack, so that its own sale is not counted; null: not on the rack. */
  readonly garment: string | null;
  readonly kind: string;
  /** Possible makers with their probabilities; null is a maker unknown or without a book. Empty: nothing known. */
  readonly makers: readonly {readonly maker: string | null; readonly probability: number}[];
  readonly lot: string | null;
  /** When it was made; null: nothing known. */
  readonly years: YearOdds | null;
  readonly size: string;
  readonly grade: Grade | null;
}

/** A look that could be taken next, with what it could show and the years it would then leave. */
export interface Look {
  readonly mark: string;
  readonly name: string;
  readonly effort: number;
  readonly opensSeam: boolean;
  readonly outcomes: readonly {readonly probability: number; readonly years: YearOdds}[];
}

/** A garment as the shop's books need it. */
export interface ShopGarment {
  readonly id: string;
  /** The owner's number or name for it. */
  readonly number: string;
  readonly kind: string;
  readonly maker: string | null;
  /** Likeliest year of making; null: not dated. */
  readonly year: number | null;
  readonly paid: Amount | null;
  readonly asked: Amount | null;
  readonly money: MoneyStory | null;
  /** False: given away, kept, or taken off the rack: counted as bought, never as slow. */
  readonly offered: boolean;
}
