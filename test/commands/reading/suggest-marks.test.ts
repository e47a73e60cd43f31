// Words on labels and what they suggest, letter by letter and worn.
import {describe, expect, it} from "vitest";
import {suggestMarks} from "../../../commands/reading/suggest-marks.ts";
import {findSizes} from "../../../commands/reading/words/tag-size.ts";
import {bareRow, findPhrase} from "../../../commands/reading/words/find-phrase.ts";
import {lexicon} from "../../../commands/reading/words/lexicon.ts";
import {countryNames} from "../../../commands/reading/words/country.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {seeded} from "../../simulate/random.ts";

const books = shippedBooks().books!;
const publicBook = books.find(({kind}) => kind === "public")!;
const suggested = (rows: readonly string[], options = {}) => Object.fromEntries(suggestMarks(rows, {books}, options).map(({mark, value}) => [mark, value]));

describe("words on a label", () => {
  it("suggest care, fibre, origin and registered number of a plain label", () => {
    expect(suggested(["MACHINE WASH WARM", "100% COTTON", "MADE IN U.S.A.", "RN 45321", "412-0318", "3 8 21"])).toEqual({
      "us.care.label.instructions": ["few-words", "words-and-symbols"],
      "us.fibre.content.statement": "percentages",
      "origin.line.country.line": "usa",
      "us.numbers.registered-numbers.prefix": "rn",
      "us.numbers.registered-numbers.rn-number": "45321",
    });
  });
  it("are borne with swapped characters and without blanks", () => {
    expect(suggested(["MACH1NEWASHWARM", "65%POLYESTEK", "MADEIN USA", "CRAFTED WITH PR1DE IN U S A"])).toMatchObject({
      "us.fibre.generic-names-1960.polyester": "present", "origin.line.country.line": "usa", "origin.line.wording.crafted-with-pride": "present",
    });
  });
  it("tell where they stood, how like they are and why", () => {
    const [only] = suggestMarks(["412-0318", "NYL0N"], {books}).filter(({mark}) => mark.endsWith("nylon"));
    expect(only).toMatchObject({row: 1, words: "NYL0N", book: "public", why: "“NYL0N” is read on the label, most likely “NYLON”"});
    expect(only!.likeness).toBeLessThan(1);
  });
  it("are the longer of two that overlap: modacrylic is no acrylic, rayon from bamboo no plain bamboo", () => {
    const marks = Object.keys(suggested(["55% MODACRYLIC", "RAYON FROM BAMBOO", "TRIACETATE"]));
    expect(marks).toContain("us.fibre.generic-names-1960.modacrylic");
    expect(marks).not.toContain("us.fibre.generic-names-1960.acrylic");
    expect(marks).toContain("us.fibre.bamboo.rayon-from-bamboo");
    expect(marks).not.toContain("us.fibre.bamboo.plain");
    expect(marks).not.toContain("us.fibre.rayon.acetate-apart");
  });
  it("leave values open that words cannot tell", () => {
    expect(suggested(["INTERNATIONAL LADIES GARMENT WORKERS UNION"])["union.us.label.union"]).toHaveLength(4);
    expect(suggested(["WASH WARM", "DO NOT BLEACH", "TUMBLE DRY", "WARM IRON"])["us.care.label.instructions"]).toEqual(["full-words", "words-and-symbols"]);
  });
  it("need a sign of the United States where the same word is usual elsewhere", () => {
    expect(suggested(["VISCOSE"])).not.toHaveProperty("us.fibre.iso-names.viscose");
    expect(suggested(["VISCOSE", "MADE IN U.S.A."])).toHaveProperty("us.fibre.iso-names.viscose");
  });
  it("say nothing where there are only codes, or nothing", () => {
    expect(suggested(["412-0318", "3 8 21", "0389", "1798 515", "PLACE", "IRONTON", "870"], {makers: ["marrowfield"]})).toEqual({});
    expect(suggested([])).toEqual({});
    expect(suggested(["", "   ", "...", "%%%"])).toEqual({});
  });
  it("include codes that a scheme reads, and the code that a place repeats", () => {
    expect(suggested(["DSA100-67-C-2010"])).toEqual({"us.military.contract.number": "DSA100-67-C-2010"});
    expect(suggested(["Z167"], {makers: ["marrowfield"]})).toEqual({"zip-date": "Z167"});
    expect(suggested(["21"], {makers: ["marrowfield"], place: "top-button-back"})).toEqual({"button-stamp": "21"});
    expect(suggested(["21"], {makers: ["marrowfield"]})).toEqual({});
  });
  it("do not come from a maker that was not asked", () => {
    expect(suggested(["Z167"])).toEqual({});
  });
  it("never name a mark or value that no book at hand knows", () => {
    for (const {mark, value, book} of suggestMarks(["100% COTTON", "MADE IN U.S.A.", "RN 45321", "AFL-CIO", "EN 471:2003", "PAT. 1,234,567", "KEEP AWAY FROM FIRE"], {books})) {
      const rule = books.find((one) => one.book === book)!.marks[mark]!;
      if (rule.kind === "choice") for (const one of [value].flat()) expect(Object.keys(rule.values)).toContain(one);
    }
  });
  it("are all of marks and values that the public book holds", () => {
    const unknown = lexicon.filter(({mark, value}) => {
      const rule = publicBook.marks[mark];
      return !rule || (rule.kind === "choice" && [value].flat().some((one) => !(one in rule.values)));
    });
    expect(unknown.map(({mark}) => mark)).toEqual([]);
  });
});

// Short names in common use. Source: ISO 3166-1, English short names (from memory).
describe("the origin line", () => {
  it.each([["MADE IN JAPAN", "japan"], ["MADE IN OCCUPIED JAPAN", "occupied-japan"], ["MADE IN WEST GERMANY", "west-germany"], ["MADE IN HONG KONG", "hong-kong"], ["MADE IN BRITISH HONG KONG", "hong-kong-british"], ["HECHO EN U.S.A.", "usa"], ["MADE IN TURKEY", "turkey"], ["MADE IN SRI LANKA", "sri-lanka"]])("%s is %s", (row, value) => {
    expect(suggested([row])).toEqual({"origin.line.country.line": value});
  });
  it("runs on in the next row", () => {
    expect(suggested(["MADE IN", "WEST GERMANY"])).toEqual({"origin.line.country.line": "west-germany"});
  });
  it("is known by its name for nearly every value of the public book", () => {
    const names = [...countryNames(publicBook)].filter(([, phrases]) => phrases.length > 0);
    const missed = names.filter(([id, phrases]) => suggested([`MADE IN ${phrases[0]}`])["origin.line.country.line"] !== id).map(([id]) => id);
    expect(missed).toEqual([]);
  });
});

describe("worn words", () => {
  it("are still found four times in five when one character in twelve is another, and never among random letters", () => {
    const random = seeded(3);
    const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
    const phrases = ["MACHINE WASH WARM", "UNITED GARMENT WORKERS OF AMERICA", "KEEP AWAY FROM FIRE", "PERMANENT PRESS", "POLYESTER", "CRAFTED WITH PRIDE IN USA"];
    let [found, all, invented] = [0, 0, 0];
    for (const phrase of phrases) {
      for (let i = 0; i < 50; i++) {
        const worn = [...phrase].map((sign) => (random.happens(1 / 12) ? random.pick([...letters]) : sign)).join("");
        found += Number(findPhrase(phrase, bareRow(worn)) !== null);
        invented += Number(findPhrase(phrase, bareRow(Array.from({length: 24}, () => random.pick([...letters])).join(""))) !== null);
        all++;
      }
    }
    expect(found / all).toBeGreaterThan(0.8);
    expect(invented).toBe(0);
  });
});

describe("sizes", () => {
  it.each([["W 32 L 34", {waist: 32, inseam: 34}], ["W32 L34", {waist: 32, inseam: 34}], ["34X30", {waist: 34, inseam: 30}], ["SIZE 40", {waist: null, chest: null}], ["MEDIUM", {text: "MEDIUM"}], ["CHEST 42", {chest: 42}]])("are told from %s", (row, size) => {
    expect(findSizes([row])).toMatchObject([size]);
  });
  it("are not made of codes", () => {
    expect(findSizes(["412-0318", "3 8 21", "0389", "214 11 5"])).toEqual([]);
  });
});
