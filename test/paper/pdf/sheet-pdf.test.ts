// Dating sheets as PDF: every word that the sheet states can be selected, the code is read off the rendered page, and the file keeps the rules of its standard.
import {inflateSync} from "node:zlib";
import {beforeAll, expect, test} from "vitest";
import {printSheets} from "../../../paper/print.ts";
import {composeSheet} from "../../../paper/sheet/compose.ts";
import type {Sheet} from "../../../paper/sheet/sheet.ts";
import {materialOf, newRack, photos, today} from "../material.ts";
import {pagesOf} from "../pdf-pages.ts";
import {codesIn} from "../read-codes.ts";
import {factsOf} from "../../../paper/fact/facts.ts";
import {fingerprintOf} from "../../../paper/fact/fingerprint.ts";
import {readCode} from "../../../paper/fact/sheet-code.ts";
import {termsOf} from "../../../paper/sheet/compose.ts";
import type {Material} from "../../../paper/sheet/material.ts";

let material: Material;
let sheet: Sheet;
let plain: Sheet;
const options = {on: today, author: "Tannery Row Old Workwear"};
beforeAll(async () => {
  const rack = await newRack();
  material = await materialOf("0147", rack);
  sheet = composeSheet(material, 3);
  plain = composeSheet(await materialOf("0187", rack, {}), 3);
});

/** Ligatures and blanks that a renderer sets otherwise are no matter of ours. */
const flat = (text: string) => text.replaceAll("ﬁ", "fi").replaceAll("ﬂ", "fl").replace(/[\s\u00ad\ufffe-]+/g, "");

const statedIn = ({garment, verdict, odd, evidence, measures, state, cautions, estimate, books, code, number}: Sheet) => [
  garment.number, garment.title, garment.about, verdict.lead, verdict.words, verdict.odds, ...verdict.bounds, ...odd, ...evidence.flatMap(({name, seen, lines}) => [name, seen ?? "", ...lines]),
  ...measures.flatMap(({name, text}) => [name, text]), ...state.flatMap(({name, text}) => [name, text]), ...cautions, estimate, books, code.how, code.short, number,
];

test.each(["a4", "letter"] as const)("every word of a sheet can be selected on %s", async (size) => {
  for (const [one, shown] of [[sheet, await photos()], [plain, new Map()]] as const) {
    const pages = await pagesOf(await printSheets([{sheet: one, photos: shown}], size, options));
    expect(Math.abs(pages[0]!.width - (size === "a4" ? 595.28 : 612))).toBeLessThan(1);
    expect(Math.abs(pages[0]!.height - (size === "a4" ? 841.89 : 792))).toBeLessThan(1);
    const text = flat(pages.map((page) => page.text).join(" "));
    // A paragraph may go on over the page, with what repeats on pages between: words are looked for one by one there.
    for (const said of statedIn(one)) if (!text.includes(flat(said))) for (const word of said.split(" ")) expect(text, said).toContain(flat(word));
    pages.forEach((page, i) => expect(page.text).toContain(`page ${i + 1} of ${pages.length}`));
  }
});

test("the square code on the rendered page leads back to the facts of the garment", async () => {
  const pages = await pagesOf(await printSheets([{sheet, photos: await photos()}], "a4", options));
  // 150 dots to the inch: a plain office scanner.
  const found = (await Promise.all(pages.map(async (page) => codesIn(await page.render(150 / 72))))).flat();
  expect(found.map(({format}) => format)).toEqual(["QRCode"]);
  const read = readCode(found[0]!.text)!.code!;
  expect(read).toMatchObject({id: material.id, number: "0147", terms: {on: today, photos: 3, grade: material.graded!.grade}});
  expect(read.fingerprint).toBe(fingerprintOf(factsOf(material.content, material.dating, termsOf(material, 3))));
});

test("the longest code that a sheet can carry is read as well", async () => {
  const long = composeSheet({...material, worth: "About EUR 1,220; 8 in 10 such sales bring EUR 1,110 to EUR 1,300. From sales known on 2026-11-25.", content: {...material.content, garment: {...material.content.garment, garment: "W".repeat(100)}}}, 3);
  const pages = await pagesOf(await printSheets([{sheet: long, photos: new Map()}], "a4", options));
  const found = (await Promise.all(pages.map(async (page) => codesIn(await page.render(300 / 72))))).flat();
  expect(readCode(found[0]!.text)?.code?.number).toBe("W".repeat(100));
});

test("photos are put on the sheet as they are, each once, and those that went missing leave no hole", async () => {
  const shown = await photos();
  const bytes = Buffer.from(await printSheets([{sheet, photos: shown}, {sheet, photos: shown}], "a4", options));
  for (const jpeg of shown.values()) expect(countOf(bytes, Buffer.from(jpeg).subarray(200, 420))).toBe(1);
  shown.delete("1".repeat(64));
  const pages = await pagesOf(await printSheets([{sheet, photos: shown}], "a4", options));
  expect(flat(pages.map((page) => page.text).join())).toContain("topbutton");
});

const countOf = (bytes: Buffer, part: Buffer) => {
  let [count, at] = [0, -1];
  while ((at = bytes.indexOf(part, at + 1)) >= 0) count++;
  return count;
};

// Sources: ISO 19005-2 (PDF/A-2) clauses 6.2.3 (output intent), 6.2.11.4 (fonts are embedded), 6.6 (metadata), 6.7 (logical structure, level A); ISO 32000-1 clauses 14.7 to 14.9. From memory of the standards; the file was not put through a certified checker.
test("the file says that it is PDF/A-2a, is tagged, tells its language and title, and embeds every typeface", async () => {
  const bytes = Buffer.from(await printSheets([{sheet, photos: await photos()}], "a4", {...options, compress: false}));
  const text = bytes.toString("latin1");
  expect(text).toMatch(/^%PDF-1\.7/);
  const all = text + streamsOf(bytes);
  expect(all).toMatch(/<pdfaid:part>2<\/pdfaid:part>\s*<pdfaid:conformance>A</);
  expect(text).toContain("/MarkInfo");
  expect(text).toContain("/StructTreeRoot");
  expect(text).toMatch(/\/Lang \(en\)/);
  expect(text).toContain("/DisplayDocTitle true");
  expect(text).toMatch(/\/S \/GTS_PDFA1[^]*?sRGB/);
  const fonts = [...text.matchAll(/\/Type \/FontDescriptor[^]*?>>/g)];
  expect(fonts.length).toBeGreaterThan(1);
  for (const [font] of fonts) expect(font).toMatch(/\/FontFile2 /);
  expect(text).not.toMatch(/\/Subtype \/Type1\b/);
  for (const tag of ["Document", "H1", "H2", "P", "L", "LI", "Figure"]) expect(text, tag).toContain(`/S /${tag}`);
  for (const [figure] of text.matchAll(/\/S \/Figure[^]*?endobj/g)) expect(figure).toMatch(/\/Alt \(|\/Alt </);
  expect(text).not.toMatch(/\/JavaScript|\/Launch|\/URI|\/Encrypt/);
});

/** Metadata stay unpacked by the standard; nothing else is looked for in streams. */
function streamsOf(bytes: Buffer): string {
  const found: string[] = [];
  const text = bytes.toString("latin1");
  for (const {index} of text.matchAll(/stream\r?\n/g)) {
    const from = index + (text[index + 6] === "\r" ? 8 : 7);
    const until = text.indexOf("endstream", from);
    try {
      found.push(inflateSync(bytes.subarray(from, until)).toString("latin1"));
    } catch {
      found.push(text.slice(from, Math.min(until, from + 5000)));
    }
  }
  return found.join("\n");
}

test("the same sheet on the same day gives the same bytes", async () => {
  const [one, again] = await Promise.all([printSheets([{sheet, photos: new Map()}], "a4", options), printSheets([{sheet, photos: new Map()}], "a4", options)]);
  expect(Buffer.from(one).equals(Buffer.from(again))).toBe(true);
});

test("a sheet with hundreds of flaws, long words and signs of other scripts goes on over pages and breaks nothing", async () => {
  const state = Array.from({length: 200}, (_, i) => ({name: i === 0 ? "flaws" : "", text: `hole no. ${i}, ${"long".repeat(60)}`}));
  const odd = {...sheet, garment: {number: "0147", title: "Брюки, Παντελόνι, ズボン 👖 Źdźbło", about: ""}, state, measures: []};
  const pages = await pagesOf(await printSheets([{sheet: odd, photos: new Map()}], "letter", options));
  expect(pages.length).toBeGreaterThan(4);
  const text = flat(pages.map((page) => page.text).join(" "));
  expect(text).toContain("Брюки,Παντελόνι,???");
  expect(text).toContain(flat("hole no. 199"));
  expect(text).toContain(flat("4 signs on this sheet have no letter in its typefaces and stand as a question mark."));
});
