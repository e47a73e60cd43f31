// Listing text: written from what was examined alone, honest about how sure it is, and whole whatever the template leaves out.
import {beforeAll, expect, test} from "vitest";
import {listingBlocks, listingTemplateSchema, placeholders} from "../../../commands/paper/listing-template.ts";
import type {Rack} from "../../../commands/rack/rack.ts";
import {composeListing, placeholderValues} from "../../../paper/listing/listing.ts";
import {writeListing} from "../../../paper/listing/forms.ts";
import type {Material} from "../../../paper/sheet/material.ts";
import {materialOf, newRack} from "../material.ts";

let rack: Rack;
let whole: Material;
beforeAll(async () => {
  rack = await newRack();
  whole = await materialOf("0147", rack);
});
const text = (material: Material, template: object = {}) => writeListing("plain", composeListing(material, listingTemplateSchema.parse(template)), material);

test("date, odds, reasons, measurements, every flaw and the price stand in it, in sentences or in short lines", () => {
  const spoken = text(whole);
  expect(spoken).toMatch(/^Straight-leg trousers, worn label, no\. 0147\n/);
  expect(spoken).toContain("Most likely made by Marrowfield Dungaree Company in March 1968, at its plant 21: the marks speak for that with 77 in 100. It is no earlier than Mar 1968 and no later than Mar 1976.");
  for (const said of ["Waist, laid flat: 16 1/4 in (41.5 cm); all round 32 1/2 in", "Outseam: 101 cm (39 3/4 in)", "Size on its tag: W 34 L 32", "Weight of the cloth: 13.75 oz/yd² (466 g/m²)", "slight hole at the left knee, mended, 12 mm (darned by hand); stain at the right thigh, 30 mm", "Changed: shortened hem (by 4 cm)", "Missing: a button", "Price: 85.00 EUR"]) expect(spoken).toContain(said);
  expect(spoken.trim().endsWith("no guarantee and no certified appraisal.")).toBe(true);
  const short = text(whole, {voice: "short", units: "centimetres"});
  expect(short).toContain("most likely March 1968 (77 in 100); no earlier than Mar 1968, no later than Mar 1976");
  expect(short).toContain("Waist, laid flat: 41.5 cm; all round 82.5 cm");
  expect(short).not.toMatch(/\bin \(|\d in;/);
});

test("nothing is said that was not examined", async () => {
  const bare = await materialOf("0187", rack, {});
  const said = text(bare);
  expect(said).toContain("Its state was not written down: ask before you buy.");
  expect(said).not.toMatch(/Waist|Grade|Price|cloth:/);
  const unseen = await materialOf("0187", rack, {garment: {garment: "blank", saw: {}}});
  expect(text(unseen)).toContain("Nothing was seen on it that tells a date.");
  expect(text(unseen)).not.toMatch(/in 100|made in|\d{4}/);
});

test("the surer the date, the firmer the words; an open one is told as open, a later one in an older look as two dates", async () => {
  const as = (sureness: "sure" | "likely" | "open", kind: "one date" | "two dates" | "cannot tell" = "one date") => text({...whole, dating: {...whole.dating, sureness, kind, words: kind === "two dates" ? "made 1998, in the look of 1955" : "1968"}});
  expect(as("sure")).toMatch(/\nMade by .* in 1968/);
  expect(as("likely")).toMatch(/\nMost likely made by/);
  expect(as("open")).toMatch(/\nPerhaps made by/);
  expect(as("open", "cannot tell")).toContain("When it was made cannot be told: the marks seen leave 1968 open.");
  expect(as("likely", "two dates")).toContain("Most likely a later reproduction (77 in 100): made 1998, in the look of 1955.");
});

test("odd marks, the state and the estimate are told even when the template leaves everything out", async () => {
  const odd = {...whole, finding: {...whole.finding, odd: [{id: "buttons", says: "buttons replaced", probability: 0.83, piece: true}]}};
  const said = text(odd, {blocks: []});
  expect(said).toContain("Probably buttons replaced (83 in 100).");
  expect(said).toContain("slight hole at the left knee");
  expect(said).toContain("The date is an estimate");
  expect(said).not.toContain("85.00");
});

test("parts stand in the order of the template, own words first and last, with the garment's own in the place of braces", () => {
  const said = text(whole, {blocks: ["price", "heading"], intro: "From {shop}: {type}\nNo. {number}", outro: "{size}, {grade}, {date}"});
  expect(said.indexOf("Price:")).toBeLessThan(said.indexOf("no. 0147"));
  expect(said).toMatch(/^From : trousers\nNo\. 0147\n/);
  expect(said).toContain("W 34 L 32, good, March 1968");
  expect(text(whole, {intro: "{shop}"})).toMatch(/^Straight-leg/);
  expect(Object.keys(placeholderValues(whole)).sort()).toEqual([...placeholders].sort());
});

test("the owner's own note is told only where the template asks for it", () => {
  expect(text(whole)).not.toContain("cut down to stop it scratching");
  expect(text(whole, {blocks: ["note"]})).toContain("cut down to stop it scratching");
});

test("a template with slips is refused with what to write instead", () => {
  const problem = (template: object) => listingTemplateSchema.safeParse(template).error?.issues[0]?.message;
  expect(problem({intro: "{numbr}"})).toBe("{numbr} stands for nothing; did you mean {number}?");
  expect(problem({outro: "{zzzzzz}"})).toMatch(/there are \{number\}, \{title\}/);
  expect(problem({intro: "open { brace"})).toMatch(/without its partner/);
  expect(problem({blocks: ["date", "date"]})).toMatch(/stands there twice/);
  expect(problem({blocks: [...listingBlocks], voice: "spoken"})).toBeUndefined();
  expect(problem({tone: "loud"})).toMatch(/[Uu]nrecognized/);
});

// Source: CommonMark 0.31.2, sections 2.4 (backslash escapes), 4.2 (headings), 5.2 (list items).
test("as Markdown it has one heading, lists, and no sign of the garment's own is taken for markup", () => {
  const sly = {...whole, content: {...whole.content, garment: {...whole.content.garment, title: "# [Trousers](http://x) *new* <b>", garment: "0_1_47"}}};
  const said = writeListing("markdown", composeListing(sly), sly);
  expect(said).toContain(String.raw`# \# \[Trousers\](http://x) \*new\* \<b\>, no. 0\_1\_47`);
  expect(said.match(/^# /gm)).toHaveLength(1);
  expect(said).toMatch(/## Measurements\n\n- Waist, laid flat: 16 1\/4 in/);
});
