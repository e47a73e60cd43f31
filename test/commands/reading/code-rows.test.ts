// Rows of codes told from rows of words.
import {expect, it} from "vitest";
import {codeRows} from "../../../commands/reading/code-rows.ts";

it("rows of codes are those with figures that are no words, shares, registered numbers or addresses", () => {
  const rows = ["MACHINE WASH WARM", "412-0318", "100% COTTON", "RN 45321", "3 8 21", "MADE IN U.S.A.", "LOT 9104", "W 32 L 34", "INSP 4", "NEW YORK NY 10018"];
  expect(codeRows(rows).map((i) => rows[i])).toEqual(["412-0318", "3 8 21", "LOT 9104", "W 32 L 34", "INSP 4"]);
});
it("no row is none, and there are never more than eight", () => {
  expect(codeRows([])).toEqual([]);
  expect(codeRows(Array.from({length: 30}, (_, i) => String(100 + i)))).toHaveLength(8);
});
