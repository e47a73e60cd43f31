// On every drawing a tape is laid for every point of measure, on the sheet, and no two the same way.
import {expect, test} from "vitest";
import {garmentKinds} from "../../../state/garment-kind.ts";
import {pointsOf} from "../../../state/point.ts";
import {middleOf, tapeLines} from "../../../web/state/tape-lines.ts";

test.each(garmentKinds)("every point of %s has its line on the sheet of 340 by 380, and every line its point", (kind) => {
  expect(Object.keys(tapeLines[kind]).sort()).toEqual(pointsOf(kind).map(({id}) => id).sort());
  for (const [id, line] of Object.entries(tapeLines[kind])) for (const [x, y] of line) expect([id, x >= 0 && x <= 340 && y >= 0 && y <= 380]).toEqual([id, true]);
  expect(new Set(Object.values(tapeLines[kind]).map((line) => JSON.stringify(line))).size).toBe(Object.keys(tapeLines[kind]).length);
});

test("what is laid flat across lies level, and once on the drawing", () => {
  for (const kind of garmentKinds) for (const {id, flat} of pointsOf(kind)) if (flat && id !== "cuff") expect([kind, id, new Set(tapeLines[kind][id]!.map(([, y]) => y)).size]).toEqual([kind, id, 1]);
});

test("the name of a line stands at its middle", () => {
  expect(middleOf([[0, 0], [10, 20]])).toEqual([5, 10]);
  expect(middleOf([[0, 0], [4, 4], [10, 20]])).toEqual([4, 4]);
});
