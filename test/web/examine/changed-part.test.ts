// A word typed letter by letter is one part; two fields changed at once are none.
import {expect, test} from "vitest";
import {contentSchema} from "../../../store/model.ts";
import {changedPart} from "../../../web/examine/changed-part.ts";

const content = contentSchema.parse({garment: {garment: "1", title: "Trousers", saw: {rows: ["412"], label: "green-satin"}}});
const {garment} = content;

test.each([
  ["where it hangs", {...content, place: "attic"}, "place"],
  ["its title", {...content, garment: {...garment, title: "Trousers, worn"}}, "garment.title"],
  ["a row", {...content, garment: {...garment, saw: {...garment.saw, rows: ["412-"]}}}, "garment.saw.rows"],
  ["a mark that is taken away", {...content, garment: {...garment, saw: {rows: ["412"]}}}, "garment.saw.label"],
  ["a row that was read from a photo", {...content, labels: [{photo: "a"}] as never, garment: {...garment, saw: {...garment.saw, rows: ["412-"]}}}, "garment.saw.rows"],
  ["two things", {...content, place: "attic", garment: {...garment, title: "Jacket"}}, null],
  ["nothing", {...content}, null],
])("%s", (_, after, part) => expect(changedPart(content, after)).toBe(part));
