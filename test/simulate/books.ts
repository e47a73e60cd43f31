// Invented books to draw garments from: small enough to run ten thousand times, with every kind of rule in them.
import {bookSchema, type Book} from "../../engine/rule/schema.ts";
import {monthNumber} from "./world.ts";
import type {Source} from "./sampler.ts";

const cite = {ref: "invented", how: "inferred"} as const;
const mark = (parts: object) => ({name: "a mark", place: "anywhere", source: cite, ...parts});
const value = (begins: string | null, ends: string | null, more: object = {}) => ({
  name: "a value",
  window: {begins: begins && begins.split(" "), ends: ends && ends.split(" ")},
  ...more,
});

const head = (id: string, from: string, until: string) => ({
  book: id,
  title: id,
  edition: 1,
  kind: "maker",
  covers: {from, until},
  sources: {invented: {kind: "invented", title: "Made for the simulation"}},
  places: {anywhere: {name: "anywhere", look: "Look there.", effort: 1}},
});

/** Shifts of the windows tell two makers of one style of book apart. */
function labelledBook(id: string, {cut, order}: {cut: string; order: readonly [string, string]}): Book {
  const year = Number(cut);
  const at = (years: number, month = "01") => `${year + years}-${month}`;
  return bookSchema.parse({
    ...head(id, "1950-01", "1989-12"),
    markets: {home: 70, abroad: 20, other: 10},
    pieces: {
      "care-label": {name: "the label", stray: 0.06},
      buttons: {name: "the buttons", stray: 0.15},
    },
    schemes: {
      "month-figure": {name: "month and year figure", parts: [{month: "plain"}, {text: " "}, {year: "last figure"}], window: {ends: [at(6), at(8)]}, source: cite},
      "week-year": {name: "week and year", parts: [{week: "padded"}, {year: "two figures"}], window: {begins: [at(5), at(7)]}, source: cite},
      "abroad-quarter": {name: "quarter letter and year", parts: [{quarter: "letters"}, {year: "two figures"}], window: {begins: [at(-4), at(-2)]}, weight: 3, when: {market: "abroad"}, source: cite},
      "zip-code": {name: "zip code", parts: [{letters: 1}, {quarter: "plain"}, {year: "two figures"}], window: {begins: ["1952-01", "1956-01"]}, lag: {usual: 6, longest: 20}, source: cite},
    },
    plants: {
      unlisted: 0.6,
      source: cite,
      widths: [{window: {ends: [at(2), at(6)]}, shares: {1: 0.3, 2: 0.7}}, {window: {begins: [at(2), at(6)]}, shares: {2: 0.2, 3: 0.8}}],
      codes: {
        "7": {window: {ends: [at(-8), at(-6)]}, weight: 2},
        "21": {window: {begins: [at(-12), at(-10)], ends: [at(9), at(11)]}, weight: 2},
        "38": {window: {begins: [at(-3), at(0)], ends: [at(14), at(15)]}},
        "214": {window: {begins: [at(3), at(5)]}, weight: 2},
      },
    },
    lots: {
      prefix: {share: 0.15, figures: 2},
      source: cite,
      widths: [{window: {}, shares: {3: 0.8, 4: 0.2}}],
      codes: {"501": {window: {begins: [at(-9), at(-7)]}, weight: 2}, "612": {window: {ends: [at(1), at(3)]}, weight: 2}, "870": {window: {begins: [at(-15), at(-12)], ends: [at(10), at(12)]}, weight: 2}},
    },
    labels: {
      name: "label",
      place: "anywhere",
      piece: "care-label",
      stray: 0.04,
      lost: 0.15,
      extra: 0.08,
      source: cite,
      kinds: {
        cotton: value(null, `${at(-2)} ${at(1)}`, {
          rows: [
            {share: 0.8, fields: [order[0], " ", order[1]]},
            {share: 0.7, fields: ["lot", "-", "fabric"]},
          ],
        }),
        satin: value(`${at(-2)} ${at(0)}`, `${at(8)} ${at(10)}`, {
          variants: [{when: {plant: "21"}, window: {begins: [at(-2), at(0)], ends: [at(13), at(15)]}}],
          rows: [
            {share: 0.85, fields: ["lot", "/", {text: "W"}, "size"]},
            {share: 0.85, fields: [order[1], order[0], " ", "inspector"]},
          ],
        }),
        slip: value(`${at(7)} ${at(9)}`, null, {
          schemes: ["week-year", "abroad-quarter"],
          rows: [
            {share: 0.8, at: "top edge", fields: ["date"]},
            {share: 0.8, at: "back", fields: ["plant", ".", "other"]},
          ],
        }),
        bare: value(`${at(0)} ${at(1)}`, `${at(9)} ${at(10)}`, {weight: 0.3}),
      },
    },
    marks: {
      button: mark({
        kind: "choice", piece: "buttons", stray: 0.05, lost: 0.05,
        values: {ring: value(null, `${at(-6)} ${at(-3)}`), leaf: value(`${at(-7)} ${at(-4)}`, `${at(5)} ${at(9)}`), star: value(`${at(6)} ${at(8)}`, null)},
      }),
      "button-stamp": mark({kind: "repeat", of: "plant", piece: "buttons", stray: 0.06, lost: 0.1, window: {begins: [at(-14), at(-12)], ends: [at(10), at(13)]}, inside: 0.9, outside: 0.1}),
      "patch-lot": mark({kind: "repeat", of: "lot", stray: 0.08, lost: 0.3, window: {}, inside: 0.8}),
      union: mark({
        kind: "choice", stray: 0.03, lost: 0.2, other: 0.1,
        values: {none: value(`${at(4)} ${at(8)}`, null, {weight: 2}), seal: value(null, `${at(-5)} ${at(-1)}`), wheel: value(`${at(-5)} ${at(-1)}`, null, {weight: 0.8, variants: [{when: {market: "abroad"}, window: {begins: [at(6), at(7)], ends: null}, weight: 0.2}]})},
      }),
      "wash-signs": mark({kind: "presence", piece: "care-label", stray: 0.04, lost: 0.1, window: {begins: [at(8), at(11)]}, inside: 0.95, outside: 0.03, variants: [{when: {market: "abroad"}, window: {begins: [at(-1), at(2)]}}]}),
      "home-tax": mark({kind: "presence", stray: 0.03, lost: 0.3, when: {market: "home"}, elsewhere: 0.05, window: {ends: [at(-3), at(0)]}, inside: 0.9, outside: 0.05}),
      "zip-stamp": mark({kind: "coded", stray: 0.12, lost: 0.2, schemes: ["zip-code"]}),
      patent: mark({
        kind: "serial", stray: 0.06, lost: 0.3, fuzz: 4, use: {rise: 12, usual: 60, longest: 180},
        knots: [{month: "1935-01", number: 1_000}, {month: "1950-01", number: 4_000}, {month: "1970-01", number: 12_000}, {month: "1990-01", number: 26_000}],
      }),
      seam: mark({kind: "presence", stray: 0.02, lost: 0.02, window: {ends: [at(4), at(9)]}, inside: 0.85, outside: 0.08}),
    },
  });
}

/** A book with every kind of rule; date before plant in the rows. */
export const saltmarsh = labelledBook("saltmarsh", {cut: "1968", order: ["date", "plant"]});
/** The same style of book with other months and plant before date, to be told apart from the first. */
export const heronbeck = labelledBook("heronbeck", {cut: "1973", order: ["plant", "date"]});

/** A small book without label or numbers: choices and presences alone, all in one group. */
export const gorsehill: Book = bookSchema.parse({
  ...head("gorsehill", "1940-01", "1979-12"),
  pieces: {front: {name: "the front", stray: 0.1}},
  marks: {
    zip: mark({kind: "choice", piece: "front", stray: 0.08, lost: 0.02, values: {buttons: value(null, "1956-01 1960-01"), steel: value("1950-01 1955-01", "1966-01 1969-01"), brass: value("1964-01 1967-01", null)}}),
    button: mark({kind: "choice", piece: "front", stray: 0.08, lost: 0.05, values: {wreath: value(null, "1953-01 1956-01"), ring: value("1952-01 1955-01", "1968-01 1971-01"), plain: value("1967-01 1970-01", null)}}),
    rivet: mark({kind: "choice", stray: 0.04, lost: 0.05, other: 0.1, values: {bare: value(null, "1957-01 1961-01"), stamped: value("1956-01 1959-01", null, {outside: 0.05})}}),
    thread: mark({kind: "choice", stray: 0.02, lost: 0.02, values: {lemon: value(null, "1961-01 1964-01"), tobacco: value("1960-01 1963-01", null)}}),
    selvedge: mark({kind: "presence", stray: 0.02, lost: 0.02, window: {ends: ["1965-01", "1970-01"]}, inside: 0.8, outside: 0.05}),
    tacks: mark({kind: "presence", stray: 0.02, lost: 0.05, window: {begins: ["1957-01", "1962-01"]}, inside: 0.9, outside: 0.05}),
  },
});

const months = (from: string, until: string) => ({from: monthNumber(from), until: monthNumber(until)});

/** One maker's garments, over the months that its book speaks of with some years around. */
export const testSources: Readonly<Record<string, Source>> = {
  saltmarsh: {makers: [saltmarsh], axis: months("1945-01", "1994-12")},
  gorsehill: {makers: [gorsehill], axis: months("1935-01", "1984-12")},
  "saltmarsh or heronbeck": {makers: [saltmarsh, heronbeck], axis: months("1945-01", "1994-12")},
};

/** A shipped maker's book, its marks taken as independent: a tempered group is deliberately less sure than its own draws would be. */
export function independent(book: Book): Book {
  return {...book, groups: {}};
}

/** The months that an examination of real garments considers. */
export const shippedAxis = months("1900-01", "2026-06");
