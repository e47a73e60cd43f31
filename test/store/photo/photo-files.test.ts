// Photos: kept byte for byte, shown upright and without a word about where they were taken; what is no photo is refused.
// Source of the orientations: Exif 2.32 (CIPA DC-008-2019), tag 0x0112: 1 upright, 2 mirrored, 3 upside down, 4 = 3 mirrored, 5 = 6 mirrored, 6 turned right, 7 = 8 mirrored, 8 turned left.
import {createHash} from "node:crypto";
import {existsSync, mkdtempSync, readdirSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import sharp from "sharp";
import {afterAll, expect, test} from "vitest";
import {photoFiles} from "../../../store/photo/photo-files.ts";

const folder = mkdtempSync(join(tmpdir(), "ticking-photos-"));
afterAll(() => rmSync(folder, {recursive: true, force: true}));
const files = photoFiles(folder);
const at = "2026-06-01T10:00:00.000Z";
const filesBelow = () => readdirSync(folder, {recursive: true, encoding: "utf8"}).sort();

/** 40 by 20, red in the upper left corner, blue elsewhere. */
const picture = () => sharp({create: {width: 40, height: 20, channels: 3, background: "#0000ff"}}).composite([{input: {create: {width: 20, height: 10, channels: 3, background: "#ff0000"}}, left: 0, top: 0}]);

async function corner(jpeg: Uint8Array): Promise<string> {
  const {data, info} = await sharp(jpeg).raw().toBuffer({resolveWithObject: true});
  const red = (x: number, y: number) => data[(y * info.width + x) * info.channels]! > 128;
  const [right, low] = [info.width - 3, info.height - 3];
  return [red(2, 2) && "upper left", red(right, 2) && "upper right", red(2, low) && "lower left", red(right, low) && "lower right"].filter(Boolean).join();
}

test.each([
  [1, "upper left", 40], [2, "upper right", 40], [3, "lower right", 40], [4, "lower left", 40], [5, "upper left", 20], [6, "upper right", 20], [7, "lower right", 20], [8, "lower left", 20],
])("a photo of orientation %i is shown with its corner %s", async (orientation, wanted, width) => {
  const bytes = await picture().withMetadata({orientation}).jpeg({quality: 100}).toBuffer();
  const {photo} = await files.add(bytes, "a.jpg", at);
  expect(photo).toMatchObject({mime: "image/jpeg", bytes: bytes.length, width, height: 60 - width});
  expect(await corner((await files.read(photo!.photo, "small"))!)).toBe(wanted);
});

test("the original stays byte for byte, under its hash; where it was taken is in neither of the others", async () => {
  const bytes = await picture().withExif({IFD0: {Make: "a camera"}, IFD3: {GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1"}}).jpeg().toBuffer();
  expect((await sharp(bytes).metadata()).exif).toBeDefined();
  const {photo} = await files.add(bytes, "a.jpg", at);
  expect(photo!.photo).toBe(createHash("sha256").update(bytes).digest("hex"));
  expect(Buffer.compare(Buffer.from((await files.read(photo!.photo, "original"))!), bytes)).toBe(0);
  for (const size of ["small", "shown"] as const) {
    const made = (await files.read(photo!.photo, size))!;
    expect((await sharp(made).metadata()).exif).toBeUndefined();
    expect(Buffer.from(made).includes("a camera")).toBe(false);
  }
});

test("smaller ones are no larger than 320 and 1600 pixels, and never larger than the original", async () => {
  const {photo} = await files.add(await sharp({create: {width: 4000, height: 1000, channels: 3, background: "#abc"}}).png().toBuffer(), "a.png", at);
  const sizes = await Promise.all((["small", "shown"] as const).map(async (size) => (await sharp((await files.read(photo!.photo, size))!).metadata()).width));
  expect(sizes).toEqual([320, 1600]);
});

test("the same photo twice is kept once", async () => {
  const bytes = await picture().webp().toBuffer();
  await files.add(bytes, "a.webp", at);
  const before = filesBelow();
  expect((await files.add(bytes, "again.webp", at)).photo!.mime).toBe("image/webp");
  expect(filesBelow()).toEqual(before);
});

const whole = await picture().resize(800, 400, {kernel: "nearest"}).jpeg().toBuffer();
test.each<[string, Uint8Array, string]>([
  ["nothing", new Uint8Array(0), "store/photo-unknown"],
  ["a text", Buffer.from("this is no photo"), "store/photo-unknown"],
  ["a drawing with a script", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>'), "store/photo-unknown"],
  ["a moving picture", await picture().gif().toBuffer(), "store/photo-unknown"],
  ["a photo cut off", whole.subarray(0, Math.floor(whole.length / 2)), "store/photo-broken"],
  ["a head without a body", whole.subarray(0, 20), "store/photo-unknown"],
])("%s is refused, and leaves nothing behind", async (_, bytes, code) => {
  const before = filesBelow();
  expect((await files.add(bytes, "x", at)).problems?.map((problem) => problem.code)).toEqual([code]);
  expect(filesBelow()).toEqual(before);
});

test("a file of more than 60 MB is refused before it is looked at", async () => {
  expect((await files.add(new Uint8Array(60_000_001), "x", at)).problems![0]!.what).toContain("60 MB");
});

test("a small file that unpacks to more than 200 million pixels is refused", async () => {
  const bomb = await sharp({create: {width: 15_000, height: 15_000, channels: 3, background: "#000"}, limitInputPixels: false}).png({compressionLevel: 9}).toBuffer();
  expect((await files.add(bomb, "x", at)).problems?.map(({code}) => code)).toEqual(["store/photo-too-many-pixels"]);
});

test("names that are no hash open nothing", async () => {
  for (const name of ["../../etc/passwd", "..", "", "a".repeat(63), "A".repeat(64)]) expect(await files.read(name, "original")).toBeNull();
  expect(await files.read("0".repeat(64), "small")).toBeNull();
  expect(existsSync(join(folder, "..", "etc"))).toBe(false);
});
