// What a column of somebody's own table holds is guessed from its name, each entry once.
import {expect, test} from "vitest";
import {guessColumns} from "../../../web/rack/guess-column.ts";

const columns = (...names: string[]) => names.map((name) => ({name, target: null}));

test("usual names of columns are understood", () => {
  expect(guessColumns(columns("Item no.", "Description", "Brand", "Label numbers", "Shelf", "Purchase price", "Price", "Colour"))).toEqual({
    "Item no.": "garment", "Description": "title", "Brand": "maker", "Label numbers": "rows", "Shelf": "place", "Purchase price": "paid", "Price": "asked", "Colour": "",
  });
});

test("no entry is guessed twice, and none that a column names itself", () => {
  expect(guessColumns([{name: "title", target: "title"}, ...columns("name", "no", "nr")])).toEqual({name: "", no: "garment", nr: ""});
});
