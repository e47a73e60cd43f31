// Cutting a stream into records. Laws: no byte is lost, the pieces do not matter, line numbers are those of the file.
import fc from "fast-check";
import {expect, test} from "vitest";
import {longestRecord, RecordSplitter, type Records} from "../../commands/batch/split.ts";

const comma = 44;

function textsOf({bytes, ends, lines}: Records): [line: number, text: string][] {
  return ends.map((end, i) => [lines[i]!, Buffer.from(bytes.subarray(i === 0 ? 0 : ends[i - 1], end)).toString("utf8")]);
}

function split(text: string, delimiter: number | null, pieces: readonly number[] = []): [number, string][] {
  const splitter = new RecordSplitter(delimiter);
  const bytes = Buffer.from(text, "utf8");
  const found: [number, string][] = [];
  let at = 0;
  for (const size of pieces) {
    found.push(...textsOf(splitter.push(new Uint8Array(bytes.subarray(at, at + size)))));
    at += size;
  }
  return [...found, ...textsOf(splitter.push(new Uint8Array(bytes.subarray(at)))), ...textsOf(splitter.end())];
}

test("the pieces in which a text arrives make no difference, and no character is lost", () => {
  const text = fc.string({unit: fc.constantFrom("a", ",", '"', "\n", "\r\n", "é"), maxLength: 60});
  fc.assert(
    fc.property(text, fc.array(fc.integer({min: 1, max: 7}), {maxLength: 12}), fc.constantFrom(comma, null), (whole, pieces, delimiter) => {
      const records = split(whole, delimiter);
      expect(split(whole, delimiter, pieces)).toEqual(records);
      expect(records.map(([, record]) => record).join("")).toBe(whole);
      let before = "";
      for (const [line, record] of records) {
        expect(line).toBe(before.split("\n").length);
        before += record;
      }
    }),
  );
});

test("a line break in a quoted cell belongs to the record, and the next record has the right line", () => {
  expect(split('1,"3 8\n21",x\n2,y\n', comma)).toEqual([[1, '1,"3 8\n21",x\n'], [3, "2,y\n"]]);
});

test("a quote that is never closed costs its own line only", () => {
  expect(split('1,"3 8\n2,y\n3,z', comma)).toEqual([[1, '1,"3 8\n'], [2, "2,y\n"], [3, "3,z"]]);
});

test("a quote that opens no cell does not swallow the next line", () => {
  expect(split('1,34" waist\n2,y\n', comma)).toEqual([[1, '1,34" waist\n'], [2, "2,y\n"]]);
});

test("an endless line is cut, its rest dropped, and the line after it read", () => {
  const endless = "x".repeat(3 * longestRecord);
  const pieces = Array.from({length: 40}, () => 20_000);
  const records = split(`1\n${endless}\n3\n`, null, pieces);
  expect(records.map(([line]) => line)).toEqual([1, 2, 3]);
  expect(records[1]![1].length).toBeGreaterThan(longestRecord);
  expect(records[1]![1].length).toBeLessThan(longestRecord + 40_000);
  expect(records[2]![1]).toBe("3\n");
});
