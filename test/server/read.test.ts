// Photos of labels read over the wire: rows with doubt, advice where nothing can be read, a bounded line of waiting photos.
import {createHash} from "node:crypto";
import sharp from "sharp";
import {afterAll, beforeAll, expect, test} from "vitest";
import {makeBooksUsed} from "../../server/books-used.ts";
import {makePhotoReader, type PhotoReader} from "../../server/photo-reader.ts";
import {mostWaiting, readRoutes} from "../../server/read-routes.ts";
import type {ReadDone} from "../../server/read-worker.ts";
import type {LabelReading} from "../../reader/model.ts";
import {shippedBooks} from "../../rulebooks/load.ts";
import {makePhoto} from "../photo/make-photo.ts";
import {storeInMemory, testApp} from "./test-app.ts";

const shipped = shippedBooks().books!;
const jpeg = {"content-type": "image/jpeg"};

function withReader(photos: PhotoReader) {
  const store = storeInMemory();
  return testApp({store, shipped, more: readRoutes(store, makeBooksUsed(store, shipped, () => new Date(Date.UTC(2026, 10, 5))), photos)});
}

let reader: PhotoReader;
let label: Uint8Array;
beforeAll(async () => {
  reader = makePhotoReader();
  label = (await makePhoto({seed: 11, level: "easy", rows: [{kind: "care", text: "MACHINE WASH WARM"}, {kind: "lot", text: "412-0318"}, {kind: "date", text: "3 8 21"}]})).jpeg;
}, 120_000);
afterAll(async () => reader.close());

test("the rows of a label come with their doubt, the photo's hash and what its maker's labels can print", async () => {
  const {ask, faults} = withReader(reader);
  const response = await ask("POST", "/api/read?maker=marrowfield&label=green-satin&turn=0", label, jpeg);
  const reading = (await response.json()) as LabelReading;
  expect([response.status, faults]).toEqual([200, []]);
  expect(reading.photo).toBe(createHash("sha256").update(label).digest("hex"));
  expect(reading.rows.map(({read}) => read.best)).toEqual(["MACHINE WASH WARM", "412-0318", "3 8 21"]);
  const {strings, none} = reading.rows[2]!.read;
  expect(strings.map(({text}) => text)).toContain("38 21");
  expect(strings.reduce((sum, {p}) => sum + p, none)).toBeCloseTo(1, 6);
}, 240_000);

test("what is blank, broken or no photo is refused with advice, and the next photo is read all the same", async () => {
  const {ask} = withReader(reader);
  const blank = await sharp({create: {width: 400, height: 300, channels: 3, background: "#ddd"}}).jpeg().toBuffer();
  const [none, cut, text] = await Promise.all([ask("POST", "/api/read", blank, jpeg), ask("POST", "/api/read", label.slice(0, 2000), jpeg), ask("POST", "/api/read", new TextEncoder().encode("hello"), jpeg)]);
  expect([none.status, cut.status, text.status]).toEqual([422, 422, 422]);
  expect(((await none.json()) as {problems: {fix: string}[]}).problems[0]!.fix).not.toBe("");
  expect((await ask("POST", "/api/read?turn=0", label, jpeg)).status).toBe(200);
}, 240_000);

test("a turn, an outline or a media type that is none is refused before anything is read", async () => {
  const {ask} = withReader(waits());
  expect((await ask("POST", "/api/read?turn=45", label, jpeg)).status).toBe(422);
  expect((await ask("POST", "/api/read?outline=1,2%203", label, jpeg)).status).toBe(422);
  expect((await ask("POST", "/api/read", label, {"content-type": "text/plain"})).status).toBe(415);
});

test("no more photos wait than the line holds", async () => {
  const {ask} = withReader(waits(mostWaiting));
  const response = await ask("POST", "/api/read", label, jpeg);
  expect([response.status, response.headers.get("retry-after")]).toEqual([503, "5"]);
  expect(((await response.json()) as {problems: {code: string}[]}).problems[0]!.code).toBe("reading/busy");
});

test("without a recogniser the answer says so, and a fault of ours is told as one", async () => {
  const missing: ReadDone = {reading: null, problems: [{code: "reader/package-missing", at: "reader", what: "w", why: "w", fix: "f"}], noReader: true};
  expect((await withReader(waits(0, missing)).ask("POST", "/api/read", label, jpeg)).status).toBe(503);
  const broken = withReader(waits(0, {fault: "it broke"}));
  expect((await broken.ask("POST", "/api/read", label, jpeg)).status).toBe(500);
  expect(broken.faults).toHaveLength(1);
});

test("the outline reaches the reader in pixels of the photo, and the corners in their order", async () => {
  const asked: unknown[] = [];
  const done: ReadDone = {reading: null, problems: []};
  const {ask} = withReader({waiting: () => 0, read: async ({outline, turn, makers, books}) => (asked.push({outline, turn, makers, books: books.map(({book}) => book)}), done), close: async () => {}});
  await ask("POST", "/api/read?outline=1,2%20301.5,4%20300,90%200,88&turn=180&maker=marrowfield%7Cnobody", label, jpeg);
  expect(asked).toEqual([{outline: [{x: 1, y: 2}, {x: 301.5, y: 4}, {x: 300, y: 90}, {x: 0, y: 88}], turn: 180, makers: ["marrowfield", "nobody"], books: ["marrowfield"]}]);
});

test("words, label kinds and sizes are told of rows alone", async () => {
  const {expectJson} = withReader(waits());
  const answer = await expectJson<{marks: {mark: string}[]; kinds: {kind: string | null}[]; sizes: object[]}>(200, "POST", "/api/read/words", {rows: ["MADE IN U.S.A.", "412-0318", "3 8 21", "W 32 L 34"], makers: ["marrowfield"]});
  expect(answer.marks.map(({mark}) => mark)).toEqual(["origin.line.country.line"]);
  expect(answer.kinds[0]!.kind).toBe("green-satin");
  expect(answer.sizes).toEqual([{text: "W 32 L 34", waist: 32, inseam: 34, chest: null, neck: null}]);
  await expectJson(422, "POST", "/api/read/words", {rows: []});
}, 120_000);

/** A reader that reads nothing. */
function waits(waiting = 0, done: ReadDone = {reading: null, problems: []}): PhotoReader {
  return {waiting: () => waiting, read: async () => done, close: async () => {}};
}
