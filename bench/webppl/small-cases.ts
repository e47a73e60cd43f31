// Small invented books and garments that enumeration by a general-purpose library can answer, too.
import {bookSchema, type Book} from "../../engine/rule/schema.ts";
import {garmentSchema} from "../../engine/rule/garment.ts";
import type {SmallCase} from "./plain-case.ts";

const cite = {ref: "invented", how: "inferred"} as const;
const mark = (parts: object) => ({name: "a mark", place: "somewhere", source: cite, ...parts});
const value = (begins: string | null, ends: string | null, more: object = {}) => ({name: "a value", window: {begins: begins && begins.split(" "), ends: ends && ends.split(" ")}, ...more});
const book = (id: string, parts: object): Book =>
  bookSchema.parse({
    book: id, title: id, edition: 1, kind: "maker", covers: {from: "1960-01", until: "1969-12"},
    sources: {invented: {kind: "invented", title: "Made for a comparison"}}, places: {somewhere: {name: "somewhere", look: "Look there.", effort: 1}},
    ...parts,
  });

const zips = {hook: value(null, "1963-01 1964-06"), steel: value("1962-06 1964-01", "1966-01 1968-01", {weight: 2}), brass: value("1966-06 1967-06", null)};
const zip = mark({kind: "choice", stray: 0.03, lost: 0.1, values: zips});
const button = mark({kind: "choice", stray: 0.12, lost: 0.05, other: 0.2, values: {ring: value(null, "1965-01 1966-01"), star: value("1964-07 1966-07", null, {outside: 0.02}), none: value("1968-01 1968-01", null, {weight: 0.3})}});
const tape = mark({kind: "presence", stray: 0.05, lost: 0.2, window: {begins: ["1963-01", "1965-06"], ends: ["1968-01", "1969-06"]}, inside: 0.85, outside: 0.04});
const care = mark({kind: "presence", stray: 0.02, lost: 0.3, window: {begins: ["1966-03", "1966-03"]}, inside: 0.97, outside: 0});

const plain = book("plainfold", {marks: {zip, button, tape}});
const pieced = book("piecework", {pieces: {top: {name: "the top", stray: 0.15}}, marks: {zip: {...zip, piece: "top"}, button: {...button, piece: "top"}, tape}});
const sold = book("twomarkets", {
  markets: {home: 70, abroad: 30},
  marks: {zip: {...zip, values: {...zips, steel: {...zips.steel, variants: [{when: {market: "abroad"}, window: {begins: ["1967-01", "1968-01"], ends: null}}]}}}, tape},
});
const later = book("laterfold", {covers: {from: "1963-07", until: "1972-06"}, marks: {zip: {...zip, values: {hook: value(null, "1967-01 1968-01"), steel: value("1966-06 1968-01", null)}}, tape: {...tape, window: {begins: ["1969-01", "1970-01"]}}}});
const law = book("law", {kind: "public", covers: {from: "1900-01"}, marks: {care}});

const garment = (rest: object) => garmentSchema.parse({garment: "a garment", ...rest});
const small = (id: string, books: readonly Book[], rest: object, until = "1969-12"): SmallCase => ({id, books, garment: garment(rest), from: "1960-01", until});

/** The first is the one whose time is compared: two choices and a presence over 120 months. */
export const smallCases: readonly SmallCase[] = [
  small("two-choices-and-a-presence", [plain], {maker: "plainfold", saw: {zip: "steel", button: "star", tape: "present"}}),
  small("one-choice", [plain], {maker: "plainfold", saw: {zip: "brass"}}),
  small("absent-counts", [plain], {maker: "plainfold", saw: {tape: "absent", zip: "hook"}}),
  small("one-of-several", [plain], {maker: "plainfold", saw: {zip: {either: {hook: 1, steel: 4}}, button: ["ring", "star"]}}),
  small("none-listed-and-not", [plain], {maker: "plainfold", saw: {zip: "none", button: "none"}}),
  small("axis-wider-than-the-book", [plain], {maker: "plainfold", saw: {zip: "brass", tape: "present"}}, "1974-12"),
  small("one-piece", [pieced], {maker: "piecework", saw: {zip: "hook", button: "star", tape: "absent"}}),
  small("market-not-known", [sold], {maker: "twomarkets", saw: {zip: "steel", tape: "absent"}}),
  small("two-makers", [plain, later], {maker: ["plainfold", "laterfold"], saw: {zip: "steel", tape: "absent"}}, "1972-06"),
  small("law-and-maker", [law, plain], {maker: "plainfold", saw: {care: "absent", zip: "brass", button: "ring"}}),
  small("law-alone", [law], {saw: {care: "present"}}),
];
