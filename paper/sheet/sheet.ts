// What a dating sheet says, as plain data: composed once, then drawn as a PDF or written as a web page.
import type {WindowText} from "../../engine/rule/schema.ts";

/** A mark that the date rests on, with who says so. */
export interface Evidence {
  readonly name: string;
  /** Null where the name says it all. */
  readonly seen: string | null;
  /** Stitches, 0 to 5. */
  readonly weight: number;
  /** In words, for a mark that does not fit or takes a side between two dates. */
  readonly note: string | null;
  readonly odd: boolean;
  /** What it says, when it was in use, and on whose authority. */
  readonly lines: readonly string[];
}

export interface SheetMonths {
  readonly name: string;
  /** 1900-01 */
  readonly first: string;
  readonly shares: readonly number[];
}

export interface SheetThread {
  readonly name: string;
  readonly window: WindowText | null;
  readonly odd: boolean;
}

export interface SheetPhoto {
  /** Hash of the original. */
  readonly photo: string;
  readonly caption: string;
}

/** A name and what belongs to it. */
export interface Entry {
  readonly name: string;
  readonly text: string;
}

export interface Sheet {
  /** Of the sheet: "0147-MZXW6Y". */
  readonly number: string;
  /** 2026-11-25 */
  readonly day: string;
  /** "25 November 2026" */
  readonly on: string;
  /** The shop's name and address, a line each. */
  readonly owner: readonly string[];
  readonly garment: {readonly number: string; readonly title: string; readonly about: string};
  readonly verdict: {readonly lead: string; readonly words: string; readonly odds: string; readonly bounds: readonly string[]};
  readonly ribbon: {readonly months: readonly SheetMonths[]; readonly threads: readonly SheetThread[]; readonly label: string};
  /** What does not fit, a sentence each. */
  readonly odd: readonly string[];
  readonly evidence: readonly Evidence[];
  readonly measures: readonly Entry[];
  readonly state: readonly Entry[];
  /** The first ones are asked for. */
  readonly photos: readonly SheetPhoto[];
  /** Null unless the owner asked for it. */
  readonly worth: string | null;
  readonly cautions: readonly string[];
  /** That all this is an estimate. */
  readonly estimate: string;
  /** What the date rests on: books with their editions. */
  readonly books: string;
  readonly code: {readonly text: string; readonly short: string; readonly how: string};
}
