// Rows of photos and rows of the slip stay together, whatever is settled, left out, read again or typed beside them.
import {expect, test} from "vitest";
import type {LabelReading, ReadRow} from "../../../reader/model.ts";
import {contentSchema, type Content} from "../../../store/model.ts";
import {mostRows, rowsBeside, settlePlace, slipRows, withoutReading, withReading, withSettled} from "../../../web/reader/label-rows.ts";

const photo = (letter: string) => letter.repeat(64);
const blank = (rows?: unknown): Content => contentSchema.parse({garment: {garment: "1", saw: rows ? {rows} : {}}});

function row(text: string, top: number, other?: [string, number]): {read: ReadRow; settled: null} {
  const strings = other ? [{text, p: 0.95 - other[1]}, {text: other[0], p: other[1]}] : [{text, p: 0.95}];
  const places = [...text].map((character, i) => (other && other[0][i] !== character ? [{character, p: 0.95 - other[1]}, {character: other[0][i]!, p: other[1]}] : [{character, p: 0.98}]));
  return {read: {quad: [{x: 0, y: top}, {x: 90, y: top}, {x: 90, y: top + 20}, {x: 0, y: top + 20}], best: text, places, strings, none: 0.05}, settled: null};
}

const reading = (letter: string, ...rows: LabelReading["rows"]): LabelReading => ({photo: photo(letter), reader: "made up", outline: null, turn: 0, rows});
const label = reading("a", row("100% COTTON", 0), row("412-0318", 30), row("3 8 21", 60, ["3 3 21", 0.2]));

test("rows of figures go to the slip in their order, words stay beside it", () => {
  const content = withReading(blank(), label, "stay");
  expect(slipRows(content).map(({from}) => from)).toEqual([{label: 0, row: 1}, {label: 0, row: 2}]);
  expect(rowsBeside(content)).toEqual([{label: 0, row: 0}]);
  expect(contentSchema.safeParse(content).success).toBe(true);
});

test("what is typed stays above a reading, or gives it its place; blank rows are not kept", () => {
  const typed = blank(["9 1 33", ""]);
  expect(slipRows(withReading(typed, label, "stay")).map(({from}) => from?.row ?? null)).toEqual([null, 1, 2]);
  expect(slipRows(withReading(typed, label, "go")).map(({from}) => from?.row ?? null)).toEqual([1, 2]);
});

test("settling one place goes to the slip and is kept apart from what was read", () => {
  const before = withReading(blank(), label, "stay");
  const content = withSettled(before, {label: 0, row: 2}, settlePlace(null, 2, "3"));
  expect(content.labels[0]!.rows[2]!.read).toEqual(label.rows[2]!.read);
  expect(content.labels[0]!.rows[2]!.settled).toEqual({text: null, places: {2: "3"}, left: false});
  expect(slipRows(content)[1]).toMatchObject({from: {label: 0, row: 2}, seen: {readings: [{text: "3 3 21"}]}});
  expect(withSettled(content, {label: 0, row: 2}, settlePlace(content.labels[0]!.rows[2]!.settled, 2, null))).toEqual(before);
});

test("a row that is none leaves the slip and comes back to where it stood, on the side it stood on", () => {
  const first = withReading(blank(), label, "stay");
  const content = {...first, garment: {...first.garment, saw: {...first.garment.saw, rows: first.garment.saw.rows!.map((one) => ({...(one as object), at: "back"}))}} as Content["garment"]};
  expect(slipRows(content).map(({from}) => from?.row)).toEqual([1, 2]);
  const left = withSettled(content, {label: 0, row: 1}, {text: null, places: {}, left: true});
  expect(slipRows(left).map(({from}) => from?.row)).toEqual([2]);
  const back = withSettled(left, {label: 0, row: 1}, null);
  expect(slipRows(back).map(({from}) => from?.row)).toEqual([1, 2]);
  expect(slipRows(back)[1]!.seen).toMatchObject({at: "back"});
});

test("a row typed over stays tied to its photo", () => {
  const content = withSettled(withReading(blank(), label, "stay"), {label: 0, row: 1}, {text: "412-0319", places: {}, left: false});
  expect(slipRows(content)[0]).toEqual({seen: {text: "412-0319"}, from: {label: 0, row: 1}});
});

test("a photo read again takes the place of its own rows, and what was settled stays with rows that stand where they stood", () => {
  let content = withReading(blank(), label, "stay");
  content = withReading(content, reading("b", row("W 34 L 32", 0)), "stay");
  content = withSettled(content, {label: 0, row: 1}, {text: "412-0319", places: {}, left: false});
  content = withSettled(content, {label: 0, row: 2}, settlePlace(null, 2, "3"));
  const again = withReading(content, reading("a", row("412-0318", 31), row("3 8 2", 61), row("77 21", 200)), "stay");
  expect(again.labels.map(({photo: one}) => one[0])).toEqual(["a", "b"]);
  expect(slipRows(again).map(({from}) => `${from?.label} ${from?.row}`)).toEqual(["0 0", "0 1", "0 2", "1 0"]);
  expect(again.labels[0]!.rows.map(({settled}) => settled?.text ?? null)).toEqual(["412-0319", null, null]);
  expect(again.labels[0]!.rows[1]!.settled).toBe(null);
});

test("forgetting a photo takes its rows off the slip, and no others", () => {
  const content = withReading(withReading(blank(["9 1 33"]), label, "stay"), reading("b", row("W 34 L 32", 0)), "stay");
  const rest = withoutReading(content, photo("a"));
  expect(rest.labels.map(({photo: one}) => one[0])).toEqual(["b"]);
  expect(slipRows(rest).map(({from}) => from?.label ?? null)).toEqual([null, 0]);
});

test("the slip never takes more rows than it has", () => {
  const content = withReading(blank(Array.from({length: 11}, (_, i) => `9 1 ${i + 10}`)), label, "stay");
  expect(content.garment.saw.rows).toHaveLength(mostRows);
});

test("hardly possible readings are told as none of them, and the whole weight stays", () => {
  const crowd = row("3 8 21", 0);
  const strings = [{text: "3 8 21", p: 0.9}, ...Array.from({length: 50}, (_, i) => ({text: `3 8 ${i + 22}`, p: 0.001}))];
  const content = withReading(blank(), reading("a", {...crowd, read: {...crowd.read, strings, none: 0.05}}), "stay");
  const {readings, none} = slipRows(content)[0]!.seen as {readings: {weight: number}[]; none: number};
  expect(readings).toHaveLength(1);
  expect(readings[0]!.weight + none).toBeCloseTo(1, 9);
});
