import sharp from "sharp";
import {expect, test} from "vitest";
import {NoReader, openReader} from "../../reader/index.ts";
import {openPhoto} from "../../reader/node.ts";

const jpeg = (width: number, height: number) => sharp({create: {width, height, channels: 3, background: "#8899aa"}}).jpeg().toBuffer();

test("a photo is opened upright, and told how large its original is", async () => {
  const bytes = await sharp(await jpeg(60, 40)).withMetadata({orientation: 6}).toBuffer();
  const {photo, problems} = await openPhoto(bytes);
  expect(problems).toEqual([]);
  expect(photo).toMatchObject({width: 40, height: 60, pixels: {width: 40, height: 60, channels: 3}});
  expect(photo!.pixels.data).toHaveLength(60 * 40 * 3);
});

test("a large photo is made small enough to work on, and its own size is still told", async () => {
  const {photo} = await openPhoto(await jpeg(8000, 1000));
  expect(photo).toMatchObject({width: 8000, height: 1000, pixels: {width: 4096, height: 512}});
});

test("grey, transparent and deep pictures come as three channels of bytes", async () => {
  for (const picture of [sharp(await jpeg(30, 30)).greyscale().png(), sharp(await jpeg(30, 30)).ensureAlpha(0.3).webp(), sharp(await jpeg(30, 30)).toColourspace("rgb16").png()]) {
    const {photo} = await openPhoto(await picture.toBuffer());
    expect(photo?.pixels).toMatchObject({width: 30, height: 30, channels: 3});
    expect(photo!.pixels.data).toHaveLength(2700);
  }
});

test("nothing, text, a photo cut short and a flood of pixels are refused with a reason", async () => {
  const whole = await sharp({create: {width: 300, height: 300, channels: 3, background: "#8899aa", noise: {type: "gaussian", mean: 128, sigma: 40}}}).jpeg().toBuffer();
  const header = await sharp({create: {width: 13000, height: 13000, channels: 3, background: "#fff"}, limitInputPixels: false}).png({compressionLevel: 9}).toBuffer();
  for (const [bytes, code] of [[new Uint8Array(0), "reader/not-photo"], [new TextEncoder().encode("<svg onload='x'>"), "reader/not-photo"], [whole.subarray(0, whole.length / 2), "reader/not-photo"], [header, "reader/too-large"]] as const) {
    const {photo, problems} = await openPhoto(bytes);
    expect(photo).toBeNull();
    expect(problems.map((problem) => problem.code)).toEqual([code]);
  }
});

test("a damaged model is a reader that is not there, with what to do", async () => {
  const broken = openReader({models: {finder: new Uint8Array(40), reader: new Uint8Array(40), keys: [..."0123456789AB"].join("\n")}});
  await expect(broken).rejects.toBeInstanceOf(NoReader);
  await expect(openReader({models: {finder: new Uint8Array(1), reader: new Uint8Array(1), keys: ""}})).rejects.toMatchObject({problem: {code: "reader/model-damaged"}});
});
