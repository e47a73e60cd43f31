// The history of a garment says in words what changed from step to step.
import {expect, test} from "vitest";
import {contentSchema, type Content} from "../../../store/model.ts";
import {sayChanges} from "../../../web/rack/say-steps.ts";

const before: Content = contentSchema.parse({garment: {garment: "12", title: "Trousers", saw: {label: "green", rows: ["3 8 21"]}}, place: "bench", tags: ["old"]});
const name = (id: string) => ({label: "care label", zip: "zip"})[id] ?? id;

test("each change is a sentence, with what was and what is", () => {
  const after: Content = {...before, garment: {...before.garment, saw: {rows: ["3 8 21"], zip: "brass"}}, place: "window", asked: {cents: 12000, currency: "EUR"}, tags: ["new"], photos: [{photo: "a".repeat(64), place: "", caption: ""}]};
  const said = sayChanges(before, after, name);
  expect(said).toContain("care label taken away, was green");
  expect(said).toContain("zip: brass");
  expect(said).toContain("kept: bench → window");
  expect(said.find((one) => one.startsWith("asking: "))).toMatch(/120/);
  expect(said).toEqual(expect.arrayContaining(["tag new put on", "tag old taken off", "a photo added"]));
  expect(said).toHaveLength(7);
});

test("a label read from a photo is said in words, its rows by their likeliest reading", () => {
  const rows = [{readings: [{text: "3 8 21", weight: 0.9}, {text: "3 3 21", weight: 0.1}], none: 0}, {readings: [{text: "418", weight: 1}], none: 0}];
  const after: Content = {...before, garment: {...before.garment, saw: {...before.garment.saw, rows} as Content["garment"]["saw"]}, labels: [{photo: "a".repeat(64), reader: "made up", outline: null, turn: 0, rows: []}]};
  expect(sayChanges(before, after, name)).toEqual(["rows: 3 8 21 → 3 8 21 | 418", "a label read from a photo"]);
});

test("nothing is said when nothing changed, and the first step counts its marks", () => {
  expect(sayChanges(before, structuredClone(before), name)).toEqual([]);
  expect(sayChanges(null, before, name)).toEqual(["2 marks noted"]);
});
