// What every reader of labels must do, whichever recogniser stands behind it.
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {readRowSchema, type Quad} from "../../reader/model.ts";
import type {LabelReader, OpenRow, Pixels} from "../../reader/reader.ts";
import {makePhoto, pixelsOf, type MadePhoto} from "../photo/make-photo.ts";

const digitsOf = (text: string) => text.replace(/\D/g, "");

/** Runs the suite over a reader. */
export function readerContract(name: string, open: () => Promise<LabelReader>): void {
  describe(name, () => {
    let [reader, photo, pixels]: [LabelReader, MadePhoto, Pixels] = [] as never;
    const read: OpenRow[] = [];

    beforeAll(async () => {
      reader = await open();
      photo = await makePhoto({seed: 4, level: "easy", rows: [{kind: "lot", text: "LOT 412-0318"}, {kind: "date", text: "0476"}, {kind: "fibre", text: "100% COTTON"}, {kind: "plant", text: "57"}]});
      pixels = await pixelsOf(photo.jpeg);
      for (const row of photo.rows) read.push(await reader.readLine(pixels, row.quad));
    });
    afterAll(() => reader.close());

    test("has a name that says which reader it is", () => {
      expect(reader.name).toMatch(/\S/);
      expect(reader.name.length).toBeLessThanOrEqual(80);
    });

    test("reads clear print: the digits of nearly every row are among its three likeliest readings", () => {
      const right = photo.rows.filter(({text}, i) => read[i]!.row.strings.slice(0, 3).some((one) => digitsOf(one.text) === digitsOf(text)));
      expect(right.length).toBeGreaterThanOrEqual(3);
    });

    test("gives rows of the agreed shape: weights fall, and sum to 1 with the chance of none of them", () => {
      for (const {row} of read) {
        readRowSchema.parse(row);
        expect(row.strings.reduce((sum, {p}) => sum + p, row.none)).toBeCloseTo(1, 6);
        expect(row.best).toBe(row.strings[0]?.text ?? "");
        expect(row.places).toHaveLength(row.best.length);
        expect(row.strings.slice(1).every(({p}, i) => p <= row.strings[i]!.p)).toBe(true);
        expect(row.places.every((place) => place.reduce((sum, {p}) => sum + p, 0) <= 1 + 1e-6)).toBe(true);
        expect(new Set(row.strings.map(({text}) => text)).size).toBe(row.strings.length);
        expect(row.strings.every(({text}) => text === text.trim())).toBe(true);
      }
    });

    test("scores any text, as it weighed those that it lists; texts beyond its characters have no chance", () => {
      for (const {row, score} of read) {
        for (const {text, p} of row.strings) expect(score(text)).toBeCloseTo(p, 6);
        for (const text of ["", "7", "999999", "A 1"]) expect(score(text)).toBeGreaterThanOrEqual(0);
        expect(row.strings.some(({text}) => text === "999999") || score("999999") <= row.none + 1e-6).toBe(true);
        expect(score("数")).toBe(0);
      }
    });

    test("finds most lines of a clear label, in the photo", async () => {
      const lines = await reader.findLines(pixels);
      expect(lines.length).toBeGreaterThanOrEqual(3);
      expect(lines.length).toBeLessThanOrEqual(12);
      for (const {quad, sure} of lines) {
        expect(sure).toBeGreaterThanOrEqual(0);
        expect(sure).toBeLessThanOrEqual(1);
        expect(quad.every(({x, y}) => x > -40 && y > -40 && x < pixels.width + 40 && y < pixels.height + 40)).toBe(true);
      }
    });

    test("says the same of the same line again, also when several are asked for at once", async () => {
      const again = await Promise.all(photo.rows.slice(0, 2).map(({quad}) => reader.readLine(pixels, quad)));
      again.forEach(({row}, i) => expect(row).toEqual(read[i]!.row));
    });

    test("a quad with no room in it reads as nothing, and one outside the photo as no more than the edge has", async () => {
      const point: Quad = [0, 0, 0, 0].map(() => ({x: 30, y: 30}));
      expect((await reader.readLine(pixels, point)).row).toMatchObject({best: "", strings: [], none: 1});
      readRowSchema.parse((await reader.readLine(pixels, photo.rows[0]!.quad.map(({x, y}) => ({x: x + 5000, y: y - 9000})))).row);
    });

    test("finds nothing on blank cloth", async () => {
      const blank: Pixels = {width: 400, height: 300, channels: 3, data: new Uint8Array(400 * 300 * 3).fill(228)};
      expect(await reader.findLines(blank)).toEqual([]);
    });
  });
}
