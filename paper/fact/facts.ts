// The facts that a dating sheet states of a garment, taken from what the rack keeps of it: these, and nothing else, make its fingerprint.
import {sayOdds} from "../../engine/index.ts";
import type {Content, Dating} from "../../store/model.ts";
import {plainJson, type Json} from "./canonical.ts";

/** What a sheet says beyond the record; it travels in the code on the sheet, so that facts can be put together again. */
export interface SheetTerms {
  /** Day of the sheet, 2026-11-25. */
  readonly on: string;
  /** How many photos are shown, the first ones. */
  readonly photos: number;
  /** In the words of the rule that gave it; null when nobody looked. */
  readonly grade: string | null;
  /** What it may be worth, in words; null unless the owner asked for it. */
  readonly worth: string | null;
}

/** Facts by the part of the sheet that states them. */
export type Facts = Readonly<Record<FactPart, Json>>;

export const factParts = ["format", "day", "garment", "seen", "date", "measurements", "state", "grade", "photos", "worth"] as const;
export type FactPart = (typeof factParts)[number];

/**
 * The facts of a sheet.
 *
 * Where a garment is kept, what was paid, its tags, the owner's note and its history are no part of a sheet; neither are the words that hold for every sheet
 * (cautions, the shop's name) nor its layout. What a rule book says of a mark follows from the mark and the book's edition, which are stated.
 */
export function factsOf({garment, photos, sizes, state}: Content, dating: Dating | null, {on, photos: shown, grade, worth}: SheetTerms): Facts {
  const {garment: number, title, type, maker, market, saw} = garment;
  return {
    format: "ticking sheet 1",
    day: on,
    garment: plainJson({number, title, type, maker, market}),
    seen: plainJson(saw),
    date: dating && dateOf(dating),
    measurements: plainJson(sizes && {measures: sizes.measures, tag: sizes.tag?.text, cloth: sizes.cloth}),
    state: plainJson(state),
    grade,
    photos: photos.slice(0, shown).map(({photo, place, caption}) => ({photo, place, caption})),
    worth,
  };
}

/** A date as far as a sheet words it: odds in a hundred, not the months behind them. */
function dateOf({kind, words, probability, sureness, noEarlier, noLater, maker, plant, odd, books}: Dating): Json {
  return {kind, words, odds: sayOdds(probability), sureness, noEarlier, noLater, maker, plant, odd, books: [...books].sort((a, b) => (a.book < b.book ? -1 : 1)).map(({book, edition}) => ({book, edition}))};
}

/** The parts in which two sets of facts differ. */
export function partsThatDiffer(one: Facts, other: Facts): FactPart[] {
  return factParts.filter((part) => JSON.stringify(one[part]) !== JSON.stringify(other[part]));
}

/** Parts in a dealer's words. */
export const partNames: Readonly<Record<FactPart, string>> = {
  format: "the form of the sheet", day: "the day", garment: "number, title, type or maker", seen: "the marks seen", date: "the date", measurements: "the measurements", state: "flaws, wear and alterations", grade: "the grade",
  photos: "the photos", worth: "the worth",
};
