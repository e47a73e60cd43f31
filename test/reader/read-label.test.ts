import {afterAll, beforeAll, expect, test} from "vitest";
import {printProblem, type Problem} from "../../engine/problem.ts";
import {labelReadingSchema, readLabel, scaledReading, type LabelReader, type Pixels} from "../../reader/index.ts";
import {within} from "../../reader/image/plane.ts";
import {openPackagedReader} from "../../reader/node.ts";
import {makePhoto, pixelsOf, type MadePhoto} from "../photo/make-photo.ts";
import {nothings, photoOfNothing} from "../photo/no-label.ts";
import {runsOf, scoreRuns} from "../photo/score.ts";

const rows = [{kind: "care", text: "MACHINE WASH WARM"}, {kind: "lot", text: "412-0318"}, {kind: "date", text: "0476"}, {kind: "plant", text: "PLANT 57"}, {kind: "registration", text: "RN 40917"}] as const;
const printed = rows.map(({text}) => text);
let reader: LabelReader;
let photo: MadePhoto;
let pixels: Pixels;

beforeAll(async () => {
  reader = await openPackagedReader();
  photo = await makePhoto({seed: 12, level: "easy", rows});
  pixels = await pixelsOf(photo.jpeg);
});
afterAll(() => reader.close());

const read = async (image: Pixels, options = {}) => {
  const answer = await readLabel(reader, image, options);
  return {...answer, texts: answer.reading?.rows.map(({read: row}) => row.best) ?? []};
};
const codes = (problems: readonly Problem[]) => problems.map(({code}) => code);

test("a clear label is read row by row from the top down, each row where it stands, in the agreed shape", async () => {
  const {reading, texts, scores, problems} = await read(pixels);
  labelReadingSchema.parse({photo: "0".repeat(64), ...reading});
  expect(scoreRuns(printed, texts)).toMatchObject({hit: 5, printed: 5});
  expect(texts[0]).toContain("WASH");
  expect(reading!.turn).toBe(0);
  expect(problems).toEqual([]);
  for (const row of photo.rows) {
    const middle = {x: (row.quad[0]!.x + row.quad[2]!.x) / 2, y: (row.quad[0]!.y + row.quad[2]!.y) / 2};
    expect(reading!.rows.some(({read: one}) => within(one.quad, middle))).toBe(true);
    expect(within(reading!.outline!, middle)).toBe(true);
  }
  const date = reading!.rows.findIndex(({read: row}) => row.best === "0476");
  expect(scores[date]!("0476")).toBeGreaterThan(scores[date]!("0478") * 10);
});

test("a label on its side or its head is read the same, and the turn that makes it upright is told", async () => {
  for (const [turn, back] of [[90, 270], [180, 180], [270, 90]] as const) {
    const lying = await makePhoto({seed: 12, level: "easy", rows, turn});
    const {reading, texts} = await read(await pixelsOf(lying.jpeg));
    expect(reading!.turn).toBe(back);
    expect(scoreRuns(printed, texts).hit).toBeGreaterThanOrEqual(4);
    expect(texts.findIndex((text) => text.includes("WASH"))).toBe(0);
  }
});

test("an outline by hand leaves out what is beside it, a turn by hand is obeyed", async () => {
  const [top, next] = [photo.rows[0]!.quad, photo.rows[2]!.quad];
  const outline = [{x: 0, y: 0}, {x: photo.width, y: 0}, {x: photo.width, y: (top[3]!.y + next[0]!.y) / 2}, {x: 0, y: (top[3]!.y + next[0]!.y) / 2}];
  const some = await read(pixels, {outline});
  expect(some.texts.length).toBeLessThan(printed.length);
  expect(some.reading!.outline).toEqual(outline);
  expect((await read(pixels, {turn: 0})).reading!.turn).toBe(0);
});

test("where nothing is printed no number is made up", async () => {
  const made: string[] = [];
  for (const kind of nothings) {
    const {texts, reading, problems} = await read(photoOfNothing(3, kind, 320, 240));
    made.push(...texts.flatMap(runsOf));
    if (reading === null) expect(problems.length).toBeGreaterThan(0);
  }
  expect(made.length).toBeLessThanOrEqual(0.1 * nothings.length);
});

test("a photo that cannot be read comes with what to do: light, shine, distance", async () => {
  expect(codes((await read(photoOfNothing(1, "black", 320, 240))).problems)).toEqual(["reader/too-dark"]);
  expect(codes((await read(photoOfNothing(1, "white", 320, 240))).problems)).toEqual(["reader/glare"]);
  expect(codes((await read(photoOfNothing(2, "denim", 320, 240))).problems)[0]).toMatch(/^reader\/(nothing-like-print|not-readable|blurred)$/);
  const {reading, problems} = await read({width: 12, height: 300, channels: 3, data: new Uint8Array(12 * 300 * 3)});
  expect(reading).toBeNull();
  expect(printProblem(problems[0]!)).toContain("12 × 300");
});

test("flat, thin and transparent pictures, and outlines of every bad kind, are borne", async () => {
  const flat: Pixels = {width: 900, height: 30, channels: 4, data: new Uint8Array(900 * 30 * 4).fill(120)};
  expect((await read(flat)).reading).toBeNull();
  for (const outline of [[0, 0, 0, 0].map(() => ({x: 5, y: 5})), [{x: 0, y: 0}, {x: 100, y: 100}, {x: 100, y: 0}, {x: 0, y: 100}], [{x: -9e6, y: -9e6}, {x: 9e6, y: -9e6}, {x: 9e6, y: 9e6}, {x: -9e6, y: 9e6}]]) {
    const {reading, problems} = await read(pixels, {outline});
    expect(reading !== null || problems.length > 0).toBe(true);
  }
});

test("a picture whose bytes do not fit its size is a fault of the caller", async () => {
  await expect(readLabel(reader, {width: 100, height: 100, channels: 3, data: new Uint8Array(5)})).rejects.toThrow("100 × 100");
});

test("a reading of a small copy fits the original when scaled", async () => {
  const {reading} = await read(pixels);
  const large = scaledReading(reading!, 2);
  expect(large.size).toEqual({width: photo.width * 2, height: photo.height * 2});
  expect(large.rows[0]!.read.quad[2]!.x).toBeCloseTo(reading!.rows[0]!.read.quad[2]!.x * 2, 9);
  expect(large.rows[0]!.read.strings).toEqual(reading!.rows[0]!.read.strings);
});
