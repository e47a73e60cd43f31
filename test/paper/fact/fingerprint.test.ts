// The fingerprint of a sheet: another for each fact that is stated, the same for everything else.
import {execFileSync} from "node:child_process";
import * as fc from "fast-check";
import {beforeAll, expect, test} from "vitest";
import {canonical} from "../../../paper/fact/canonical.ts";
import {factParts, factsOf, partsThatDiffer, type SheetTerms} from "../../../paper/fact/facts.ts";
import {base32, fingerprintOf, shortOf} from "../../../paper/fact/fingerprint.ts";
import {printCode, readCode} from "../../../paper/fact/sheet-code.ts";
import type {Content, Dating} from "../../../store/model.ts";
import {contentOf, materialOf, newRack} from "../material.ts";

let content: Content;
let dating: Dating;
const terms: SheetTerms = {on: "2026-11-25", photos: 2, grade: "good", worth: null};
beforeAll(async () => {
  content = contentOf("0147");
  dating = (await materialOf("0147", await newRack())).dating;
});
const print = (of: Content, date: Dating | null = dating, way = terms) => fingerprintOf(factsOf(of, date, way));

// Source: RFC 4648, section 10 (test vectors of base 32).
test.each([["", ""], ["f", "MY"], ["fo", "MZXQ"], ["foo", "MZXW6"], ["foob", "MZXW6YQ"], ["fooba", "MZXW6YTB"], ["foobar", "MZXW6YTBOI"]])("%j is written %s", (text, written) => {
  expect(base32(Buffer.from(text))).toBe(written);
});

// Oracle: Python's hashlib and base64, which know nothing of this project; the suite runs without Python, too.
test("another program works out the same fingerprint from the canonical facts", () => {
  const facts = factsOf(content, dating, terms);
  const program = "import sys,hashlib,base64;print(base64.b32encode(hashlib.sha256(sys.stdin.buffer.read()).digest()).decode().rstrip('='))";
  let told: string;
  try {
    told = execFileSync("python3", ["-c", program], {input: canonical(facts), encoding: "utf8"}).trim();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
    return;
  }
  expect(fingerprintOf(facts)).toBe(told);
});

/** A change of something that a sheet states, each of them another one. */
const stated: Readonly<Record<string, (of: Content) => Content>> = {
  number: (of) => ({...of, garment: {...of.garment, garment: "0148"}}),
  title: (of) => ({...of, garment: {...of.garment, title: "Other trousers"}}),
  type: (of) => ({...of, garment: {...of.garment, type: "overalls"}}),
  maker: (of) => ({...of, garment: {...of.garment, maker: "hollin-and-thrale"}}),
  "a mark more": (of) => ({...of, garment: {...of.garment, saw: {...of.garment.saw, "zip-kind": "brass"} as Content["garment"]["saw"]}}),
  "a character of a row": (of) => ({...of, garment: {...of.garment, saw: {...of.garment.saw, rows: ["412-0318", "3 8 27"]}}}),
  measurement: (of) => ({...of, sizes: {...of.sizes!, measures: of.sizes!.measures.map((one, i) => (i === 0 ? {...one, length: {...one.length, typed: "16 1/2"}} : one))}}),
  "precision of a measurement": (of) => ({...of, sizes: {...of.sizes!, measures: of.sizes!.measures.map((one, i) => (i === 1 ? {...one, length: {...one.length, typed: "30.5"}} : one))}}),
  cloth: (of) => ({...of, sizes: {...of.sizes!, cloth: null}}),
  "a flaw less": (of) => ({...of, state: {...of.state!, flaws: of.state!.flaws.slice(1)}}),
  "a flaw that is worse": (of) => ({...of, state: {...of.state!, flaws: of.state!.flaws.map((flaw) => ({...flaw, severity: "heavy" as const}))}}),
  wear: (of) => ({...of, state: {...of.state!, wear: "strong"}}),
  "nobody looked": (of) => ({...of, state: null}),
  "another photo": (of) => ({...of, photos: [{...of.photos[0]!, photo: "9".repeat(64)}, ...of.photos.slice(1)]}),
  "photos in another order": (of) => ({...of, photos: [...of.photos].reverse()}),
};

test.each(Object.keys(stated))("%s: another fingerprint", (name) => {
  expect(print(stated[name]!(content))).not.toBe(print(content));
});

test("every way to change stated facts, alone or together, has a fingerprint of its own", () => {
  const names = Object.keys(stated).filter((name) => name !== "nobody looked");
  const prints = new Map<string, string>();
  fc.assert(fc.property(fc.subarray(names), (chosen) => {
    const changed = chosen.reduce((of, name) => stated[name]!(of), content);
    const facts = canonical(factsOf(changed, dating, terms));
    const known = prints.get(print(changed));
    if (known !== undefined) expect(known).toBe(facts);
    prints.set(print(changed), facts);
  }));
  expect(new Set(prints.values()).size).toBe(prints.size);
});

test.each<[string, (of: Dating) => Dating]>([
  ["what is named", (of) => ({...of, words: "April 1968"})], ["the odds", (of) => ({...of, probability: of.probability - 0.02})], ["a bound", (of) => ({...of, noLater: "1977-03"})], ["the maker", (of) => ({...of, maker: null})],
  ["the plant", (of) => ({...of, plant: null})], ["an odd mark", (of) => ({...of, odd: of.odd + 1})], ["the edition of a book", (of) => ({...of, books: of.books.map((one) => ({...one, edition: one.edition + 1}))})],
])("%s of the date: another fingerprint", (_, change) => {
  expect(print(content, change(dating))).not.toBe(print(content));
});

test.each<[string, Partial<SheetTerms>]>([["the day", {on: "2026-11-26"}], ["how many photos are shown", {photos: 1}], ["the grade", {grade: "fair"}], ["the worth", {worth: "About EUR 80."}]])("%s: another fingerprint", (_, change) => {
  expect(print(content, dating, {...terms, ...change})).not.toBe(print(content));
});

test("nothing that a sheet does not state changes its fingerprint", () => {
  const unstated = fc.record({
    place: fc.string({maxLength: 50}), standing: fc.constantFrom("kept", "for sale", "sold" as const), paid: fc.constantFrom(null, {cents: 100, currency: "EUR"}), asked: fc.constantFrom(null, {cents: 9900, currency: "USD"}),
    tags: fc.array(fc.string({minLength: 1, maxLength: 10}), {maxLength: 4}), note: fc.string({maxLength: 80}), at: fc.constantFrom("2020-01-01T00:00:00.000Z", "2026-01-01T00:00:00.000Z"), odds: fc.double({min: 0.7655, max: 0.7745, noNaN: true}),
  });
  fc.assert(fc.property(unstated, ({note, at, odds, ...rest}) => {
    const changed = {...content, ...rest, garment: {...content.garment, note}, photos: [...content.photos.slice(0, 2), {photo: "8".repeat(64), place: "hem", caption: ""}], dating: null} as Content;
    expect(print(changed, {...dating, at, probability: odds, best: "1968-04", years: {first: 1968, shares: [1]}, books: [...dating.books].reverse()})).toBe(print(content));
  }));
});

test("the parts that differ are named, each by itself", () => {
  for (const [name, change] of Object.entries(stated)) expect(partsThatDiffer(factsOf(content, dating, terms), factsOf(change(content), dating, terms)), name).toHaveLength(1);
  expect(factParts).toHaveLength(10);
});

test("a code is read back whole, whatever stands in it; anything else is none", () => {
  const letters = base32(new Uint8Array(32).fill(7));
  fc.assert(fc.property(fc.record({id: fc.stringMatching(/^[a-z0-9]{12,32}$/), number: fc.string({minLength: 1, maxLength: 100}).filter((text) => text.isWellFormed()), photos: fc.integer({min: 0, max: 12}), grade: fc.constantFrom(null, "very good"), worth: fc.constantFrom(null, "About EUR 80; 8 in 10 bring EUR 60 to EUR 90.")}), ({id, number, ...rest}) => {
    const code = {id, number, terms: {on: "2026-11-25", ...rest}, fingerprint: letters};
    expect(readCode(printCode(code))?.code).toEqual(code);
  }));
  expect(readCode(` ${shortOf(letters).toLowerCase()} `)?.short).toBe(letters.slice(0, 12));
  for (const text of ["", "0147", "https://example.org/?f=1", "ticking:sheet/1?n=0147", printCode({id: "x", number: "1", terms, fingerprint: "SHORT"}), shortOf(letters).slice(1)]) expect(readCode(text), text).toBeNull();
});
