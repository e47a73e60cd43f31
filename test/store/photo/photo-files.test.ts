// Photos: what is taken and what is refused, upright for every orientation, nothing told of place or camera, whole or not at all.
import {createHash} from "node:crypto";
import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import sharp, {type Sharp} from "sharp";
import {afterAll, describe, expect, test} from "vitest";
import {StoreFault} from "../../../store/fault.ts";
import {originalPath, photoFiles} from "../../../store/photo/photo-files.ts";
import {mostPhotoBytes} from "../../../store/photo/sizes.ts";

const home = mkdtempSync(join(tmpdir(), "ticking-photo-"));
let count = 0;
const folder = () => join(home, String(++count));
afterAll(() => rmSync(home, {recursive: true, force: true}));

const at = "2026-06-01T10:00:00.000Z";
const plain = (width: number, height: number) => sharp({create: {width, height, channels: 3, background: {r: 90, g: 60, b: 40}}});
const codesOf = async (bytes: Uint8Array) => (await photoFiles(folder()).add(bytes, "a.jpg", at)).problems?.map(({code}) => code);

/** Upright, in quarters: red, green over blue, white. */
const corners = [[255, 0, 0], [0, 255, 0], [0, 0, 255], [255, 255, 255]] as const;
const [width, height] = [80, 48];
const colourAt = (x: number, y: number) => corners[(y < height / 2 ? 0 : 2) + (x < width / 2 ? 0 : 1)]!;

/**
 * The side of the upright picture that the first row and the first column of the stored one show.
 * Source: Exif 2.32 (CIPA DC-008), 4.6.4 A, tag Orientation (0x0112).
 */
const sides = [
  [1, "top", "left"], [2, "top", "right"], [3, "bottom", "right"], [4, "bottom", "left"], [5, "left", "top"], [6, "right", "top"], [7, "right", "bottom"], [8, "left", "bottom"],
] as const;

function stored(firstRow: string, firstColumn: string): Sharp {
  const lying = firstRow === "left" || firstRow === "right";
  const [columns, rows] = lying ? [height, width] : [width, height];
  const from = (side: string, i: number, length: number) => (side === "top" || side === "left" ? i : length - 1 - i);
  const pixels = Buffer.alloc(columns * rows * 3);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const colour = lying ? colourAt(from(firstRow, row, width), from(firstColumn, column, height)) : colourAt(from(firstColumn, column, width), from(firstRow, row, height));
      pixels.set(colour, (row * columns + column) * 3);
    }
  }
  return sharp(pixels, {raw: {width: columns, height: rows, channels: 3}});
}

describe("every orientation of the Exif standard is shown upright", () => {
  test.each(sides)("orientation %i: first row %s, first column %s", async (orientation, firstRow, firstColumn) => {
    const bytes = await stored(firstRow, firstColumn).jpeg({quality: 95, chromaSubsampling: "4:4:4"}).withMetadata({orientation}).toBuffer();
    const photos = photoFiles(folder());
    const {photo} = await photos.add(bytes, "a.jpg", at);
    expect([photo!.width, photo!.height]).toEqual([width, height]);
    for (const size of ["shown", "small"] as const) {
      const {data, info} = await sharp((await photos.read(photo!.photo, size))!).raw().toBuffer({resolveWithObject: true});
      expect([info.width, info.height]).toEqual([width, height]);
      for (const [x, y] of [[16, 12], [64, 12], [16, 36], [64, 36]] as const) {
        const seen = [...data.subarray((y * width + x) * info.channels).subarray(0, 3)];
        colourAt(x, y).forEach((wanted, channel) => expect(Math.abs(seen[channel]! - wanted)).toBeLessThan(40));
      }
    }
  });
});

test("the original stays byte for byte, under its SHA-256", async () => {
  const path = folder();
  const bytes = await plain(500, 400).jpeg().toBuffer();
  const {photo} = await photoFiles(path).add(bytes, "a.jpg", at);
  const hash = createHash("sha256").update(bytes).digest("hex");
  expect(photo).toEqual({photo: hash, mime: "image/jpeg", bytes: bytes.length, width: 500, height: 400, addedAt: at});
  expect(readFileSync(originalPath(path, hash))).toEqual(bytes);
  expect(await photoFiles(path).isSound(hash)).toBe(true);
  writeFileSync(originalPath(path, hash), "other");
  expect(await photoFiles(path).isSound(hash)).toBe(false);
});

test("shown sizes tell neither place nor camera, the original does", async () => {
  const bytes = await plain(2000, 1000).jpeg().withExif({IFD0: {Make: "Somecamera", Copyright: "me"}, IFD3: {GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1"}}).toBuffer();
  expect(bytes.includes("Somecamera")).toBe(true);
  const photos = photoFiles(folder());
  const {photo} = await photos.add(bytes, "a.jpg", at);
  for (const [size, width] of [["shown", 1600], ["small", 320]] as const) {
    const file = Buffer.from((await photos.read(photo!.photo, size))!);
    const meta = await sharp(file).metadata();
    expect([meta.width, meta.exif, meta.xmp, meta.iptc, meta.icc]).toEqual([width, undefined, undefined, undefined, undefined]);
    expect(file.includes("Exif")).toBe(false);
    expect(file.includes("Somecamera")).toBe(false);
  }
  expect((await photos.read(photo!.photo, "original"))!).toEqual(bytes);
});

test.each(["jpeg", "png", "webp", "avif"] as const)("%s is taken by its content, and refused when cut off", async (form) => {
  const noise = await sharp({create: {width: 300, height: 200, channels: 3, background: "black", noise: {type: "gaussian", mean: 120, sigma: 40}}}).toFormat(form).toBuffer();
  const photos = photoFiles(folder());
  const {photo} = await photos.add(noise, "a.txt", at);
  expect(photo!.mime).toBe(`image/${form}`);
  for (const share of [0.2, 0.5, 0.95]) expect([share, await codesOf(noise.subarray(0, Math.floor(noise.length * share)))]).toEqual([share, ["store/photo-broken"]]);
});

test("what is no photo is refused by its content", async () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><script>1</script></svg>';
  for (const text of [svg, `<?xml version="1.0"?>${svg}`, "", "GIF89a", "%PDF-1.7", "<html>", "\xff\xd8"]) expect([text, await codesOf(Buffer.from(text, "latin1"))]).toEqual([text, ["store/photo-unknown"]]);
  expect(await codesOf(Buffer.from("\xff\xd8\xff\xe0 not at all", "latin1"))).toEqual(["store/photo-broken"]);
  expect(await codesOf(Buffer.from("\0\0\0\x18ftypheic\0\0\0\0mif1heic", "latin1"))).toEqual(["store/photo-heic"]);
});

test("a file that is too large, or holds too many pixels, is refused before it is decoded", async () => {
  const large = Buffer.concat([await plain(10, 10).jpeg().toBuffer(), Buffer.alloc(mostPhotoBytes)]);
  expect(await codesOf(large)).toEqual(["store/photo-too-large"]);
  const png = Buffer.from(await plain(10, 10).png().toBuffer());
  png.writeUInt32BE(60_000, 16);
  png.writeUInt32BE(60_000, 20);
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29);
  expect(await codesOf(png)).toEqual(["store/photo-too-many-pixels"]);
});

test("pictures with clear parts are shown on white", async () => {
  const photos = photoFiles(folder());
  const {photo} = await photos.add(await sharp({create: {width: 40, height: 40, channels: 4, background: {r: 0, g: 0, b: 0, alpha: 0}}}).png().toBuffer(), "a.png", at);
  const {data} = await sharp((await photos.read(photo!.photo, "small"))!).raw().toBuffer({resolveWithObject: true});
  expect(data[0]).toBeGreaterThan(250);
});

test("a size that went missing is made again", async () => {
  const path = folder();
  const photos = photoFiles(path);
  const {photo} = await photos.add(await plain(400, 300).jpeg().toBuffer(), "a.jpg", at);
  const before = (await photos.read(photo!.photo, "small"))!;
  rmSync(`${originalPath(path, photo!.photo)}.small.jpg`);
  expect((await photos.read(photo!.photo, "small"))!).toEqual(before);
});

test("the same photo twice is kept once", async () => {
  const path = folder();
  const files = () => readdirSync(path, {recursive: true, encoding: "utf8"}).sort();
  const bytes = await plain(30, 20).webp().toBuffer();
  await photoFiles(path).add(bytes, "a.webp", at);
  const before = files();
  await photoFiles(path).add(bytes, "again.webp", at);
  expect(files()).toEqual(before);
});

test("a hash that is none leads nowhere", async () => {
  const photos = photoFiles(folder());
  for (const hash of ["../../etc/passwd", "", "ab", "AB".repeat(32), "ab".repeat(32)]) expect(await photos.read(hash, "original")).toBeNull();
});

test("on a full disk nothing is kept, and it is said", async () => {
  const path = folder();
  const photos = photoFiles(path, async (file, bytes) => {
    writeFileSync(file, bytes.subarray(0, 10));
    throw Object.assign(new Error("ENOSPC: no space left on device"), {code: "ENOSPC"});
  });
  const added = photos.add(await plain(40, 30).jpeg().toBuffer(), "a.jpg", at);
  await expect(added).rejects.toBeInstanceOf(StoreFault);
  await expect(added).rejects.toThrow("the disk is full");
  const left = readdirSync(path, {recursive: true, withFileTypes: true}).filter((entry) => entry.isFile());
  expect(left).toEqual([]);
});

test("what a crash left half-written is cleared after a day, not before", () => {
  const path = folder();
  mkdirSync(join(path, "waiting"), {recursive: true});
  for (const name of ["old", "new"]) writeFileSync(join(path, "waiting", name), "half");
  mkdirSync(join(path, "waiting", "restore-old", "photos"), {recursive: true});
  for (const name of ["old", "restore-old"]) utimesSync(join(path, "waiting", name), new Date(0), new Date(0));
  photoFiles(path);
  expect(readdirSync(join(path, "waiting"))).toEqual(["new"]);
});

/** Source: w3.org/TR/png, annex D. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
