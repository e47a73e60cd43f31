// Dating sheets as web pages: the same words as on paper, safe whatever the garment is called, and nothing fetched from elsewhere.
import {beforeAll, expect, test} from "vitest";
import {sheetPage} from "../../../paper/html/sheet-html.ts";
import {composeSheet} from "../../../paper/sheet/compose.ts";
import type {Sheet} from "../../../paper/sheet/sheet.ts";
import {materialOf, newRack} from "../material.ts";

let sheet: Sheet;
beforeAll(async () => {
  sheet = composeSheet(await materialOf("0147", await newRack()), 3);
});

const words = (page: string) => page.replace(/<style>[^]*?<\/style>/, "").replace(/<[^>]*>/g, " ").replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code))).replace(/\s+/g, " ");

test("it says what the sheet says, in a page with language, title and headings in order", () => {
  const page = sheetPage(sheet, {addressOf: (photo) => `/api/photos/${photo}/shown`, styleAt: "/api/paper/style.css"});
  for (const said of [sheet.verdict.words, sheet.verdict.odds, ...sheet.evidence.flatMap(({lines}) => lines), ...sheet.measures.map(({text}) => text), ...sheet.state.map(({text}) => text), ...sheet.cautions, sheet.code.short]) expect(words(page)).toContain(said.replace(/\s+/g, " "));
  expect(page).toContain('<html lang="en">');
  expect(page).toContain(`<title>Dating sheet ${sheet.number}</title>`);
  expect([...page.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level))[0]).toBe(1);
  expect([...page.matchAll(/<img [^>]*>/g)].every(([image]) => / alt="[^"]+"/.test(image))).toBe(true);
  expect(page).not.toMatch(/<script|style="|https?:\/\/(?!www\.w3\.org)/);
});

test("as a file it carries its look, its typefaces and its photos", () => {
  const page = sheetPage(sheet, {addressOf: (photo) => (photo.startsWith("1") ? "data:image/jpeg;base64,AAAA" : null), styleAt: null});
  expect(page).toContain("@font-face");
  expect(page).toMatch(/@media print/);
  expect(page.match(/<img /g)).toHaveLength(1);
  expect(page).not.toMatch(/<link|src="\//);
});

test("a garment's own words never become markup", () => {
  const sly: Sheet = {...sheet, garment: {number: "<script>1</script>", title: "\"><img src=x onerror=y>", about: "&lt;b&gt;"}, state: [{name: "flaws", text: "<b>hole</b>"}]};
  const page = sheetPage(sly, {addressOf: () => null, styleAt: null});
  expect(page).not.toMatch(/<script|onerror=y>|<b>hole/);
  expect(words(page)).toContain("<script>1</script>");
});
