// Reading and printing records of a table. Oracle: csv-parse 7.0.3, a general CSV library; format: RFC 4180, sections 2.5 to 2.7.
import {parse} from "csv-parse/sync";
import fc from "fast-check";
import {expect, test} from "vitest";
import {guarded, isFormula, printCells, readCells, unguarded} from "../../commands/batch/cells.ts";

const cell = fc.string({unit: fc.constantFrom("a", "8", " ", ",", ";", '"', "\n", "\r\n", "é"), maxLength: 6});

test("what is printed is read back by the library and by our own reader", () => {
  fc.assert(
    fc.property(fc.array(cell, {minLength: 2, maxLength: 6}), fc.constantFrom(",", ";"), (cells, delimiter) => {
      const record = printCells(cells, delimiter as ",");
      expect(readCells(record, delimiter as ",")).toEqual(cells);
      const [first] = parse(record, {delimiter, record_delimiter: ["\u0000"], skip_empty_lines: false}) as string[][];
      expect(first).toEqual(cells);
    }),
  );
});

test("a quote in the middle of a plain cell is only a sign, as the library reads it when quotes are relaxed", () => {
  const record = '7,34" waist,"L ""32"""';
  const [first] = parse(record, {relax_quotes: true}) as string[][];
  expect(readCells(record, ",")).toEqual(first);
});

test("a quoted cell that is not closed, or goes on after its closing quote, does not read", () => {
  expect(readCells('7,"3 8 21', ",")).toBeNull();
  expect(readCells('7,"3 8" 21', ",")).toBeNull();
});

// Source: OWASP, CSV Injection: = + - @ tab (0x09) and carriage return (0x0D) at the beginning of a cell.
test("a cell that a spreadsheet would run gets an apostrophe, which comes off again", () => {
  for (const bad of ["=1+1", "+1", "-1", "@sum", "\t=1", "\r=1"]) {
    expect(isFormula(bad)).toBe(true);
    expect(guarded(bad)).toBe(`'${bad}`);
    expect(unguarded(guarded(bad))).toBe(bad);
    expect(guarded(guarded(bad))).toBe(`'${bad}`);
  }
  for (const fine of ["", "-", "3 8 21", "it's", "'21"]) expect(unguarded(guarded(fine))).toBe(fine);
});
