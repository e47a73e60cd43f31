// Characters of a typed row keep their place in the text, doubt and all; the signs between them are told.
import {expect, test} from "vitest";
import {readTypedRow} from "../../../engine/index.ts";
import {choicesOf, printChoices, replaceCell, typedCells} from "../../../web/examine/row-text.ts";

test.each(["412-0318", "3 (8:80/3:15/6:5) 21", "0(5/6)199?", "W 34 L 32", "135/1041", ""])("%s has as many characters as the engine reads", (text) => {
  const read = readTypedRow(text);
  expect("slip" in read ? null : read.cells.length).toBe(typedCells(text).length);
});

test("what stands between two characters is told, blanks apart", () => {
  expect(typedCells("41-0 3/").map(({text, sign}) => sign + text)).toEqual(["4", "1", "-0", "3"]);
});

test("one character is put in doubt, and the rest stays as typed", () => {
  const text = "3 8 21";
  expect(replaceCell(text, typedCells(text)[1]!, printChoices([{character: "8", weight: 80}, {character: "3", weight: 20}]))).toBe("3 (8:80/3:20) 21");
});

test.each([["(8:80/3:20)", "(8:80/3:20)"], ["(3/8)", "(3:50/8:50)"], ["?", "?"], ["7", "7"]])("the choices of %s print as %s", (text, printed) => {
  expect(printChoices(choicesOf(text))).toBe(printed);
});
