// Measures as a cell of a table: what is printed reads back to the same lengths, as typed.
import fc from "fast-check";
import {expect, test} from "vitest";
import {printMeasures, readMeasures} from "../../../commands/state/measures-cell.ts";
import {printRecord} from "../../../commands/rack/table/print-table.ts";
import {entryColumns} from "../../../commands/rack/table/column.ts";
import {readRecord} from "../../../commands/rack/table/read-record.ts";
import {readCells, unguarded} from "../../../commands/batch/cells.ts";
import {readLength} from "../../../state/length.ts";
import {pointsOf} from "../../../state/point.ts";
import {contentSchema} from "../../../store/model.ts";
import {sizes, straight} from "../../state/sized.ts";

test("lengths are read back as they were typed", () => {
  const typed = sizes(straight).measures;
  expect(printMeasures({measures: typed})).toContain("waist=17 in|hip=21 in|front-rise=11 1/4 in");
  expect(readMeasures(printMeasures({measures: typed}), "trousers", "line 2").answer).toEqual(typed);
});

test("whatever unit was typed with it or chosen for it, a length keeps its millimetres", () => {
  const length = fc.record({typed: fc.constantFrom("31 1/2", "81 cm", "16.25", "32 in", '30"', "12½", "410 mm"), unit: fc.constantFrom("in" as const, "cm" as const)});
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...pointsOf("trousers").map(({id}) => id)), length), (lengths) => {
      const measures = Object.entries(lengths).map(([point, one]) => ({point, length: one}));
      const back = readMeasures(printMeasures({measures}), "trousers", "line 2").answer!;
      expect(back.map(({point, length: one}) => [point, readLength(one)!.mm])).toEqual(measures.map(({point, length: one}) => [point, readLength(one)!.mm]));
    }),
  );
});

test("a point of another garment and a slip of the pen are told with their line", () => {
  expect(readMeasures("sleeve=24|inseam=about 31", "trousers", "line 7 measures").problems!.map(({at, code}) => [at, code])).toEqual([["line 7 measures", "state/unknown-point"], ["line 7 measures inseam", "state/not-a-length"]]);
  expect(readMeasures("", "trousers", "line 7").answer).toEqual([]);
});

test("a garment's size and measures go through a table", () => {
  const content = contentSchema.parse({garment: {garment: "7", type: "trousers", saw: {}}, sizes: sizes(straight, "W 34 L 32")});
  const cells = readCells(printRecord(content, []), ",")!.map(unguarded).slice(0, entryColumns.length);
  expect(readRecord({line: 2, cells}, [...entryColumns], null).content!.sizes).toEqual(content.sizes);
  const plain = contentSchema.parse({garment: {garment: "8", saw: {}}});
  expect(readRecord({line: 3, cells: readCells(printRecord(plain, []), ",")!.map(unguarded).slice(0, entryColumns.length)}, [...entryColumns], null).content!.sizes).toBeNull();
});
