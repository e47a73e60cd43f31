// A lot on the way: no garment twice, whole numbers only, numbers typed in any manner.
import {expect, test} from "vitest";
import {emptyLot, numbersIn, unexaminedOf, withGarments, withoutGarment} from "../../../../web/worth/lot/lot-draft.ts";

test("garments are added once and taken out with their tick", () => {
  const lot = withGarments(withGarments(emptyLot, ["a", "b"]), ["b", "c"]);
  expect(lot.ids).toEqual(["a", "b", "c"]);
  expect(withoutGarment({...lot, sampled: ["b", "c"]}, "b")).toMatchObject({ids: ["a", "c"], sampled: ["c"]});
});

test("what nobody looked at is a whole number, or told to be none", () => {
  expect(["", " 40 ", "0", "4.5", "-1", "many", "1000000"].map((unexamined) => unexaminedOf({unexamined}))).toEqual([0, 40, 0, null, null, null, null]);
});

test("numbers are parted by commas, blanks, semicolons or lines", () => expect(numbersIn(" 0147, 0152;0155\n0147  A-1 ")).toEqual(["0147", "0152", "0155", "A-1"]));
