// ticking read, run as a person runs it: a photo, a folder with a broken one, a date, and refitting.
import {mkdirSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {makePhoto} from "../photo/make-photo.ts";
import {folder, ticking} from "./run-ticking.ts";

const flat = (text: string) => text.replace(/\s+/g, " ");
const label = async (path: string) => {
  const {jpeg} = await makePhoto({seed: 11, level: "easy", rows: [{kind: "care", text: "MACHINE WASH WARM"}, {kind: "lot", text: "412-0318"}, {kind: "date", text: "3 8 21"}]});
  writeFileSync(path, jpeg);
  return jpeg;
};

test("a photo is told row by row, with its marks and the date of its label", async () => {
  const path = join(folder(), "label.jpg");
  await label(path);
  const {code, out} = await ticking(["read", path, "--maker", "marrowfield", "--label", "green-satin", "--date", "--today", "2026-11"]);
  expect(code).toBe(0);
  expect(flat(out)).toMatch(/2 412-0318: (more than )?\d\d in 100/);
  expect(flat(out)).toContain("us.care.label.instructions=few-words|words-and-symbols");
  expect(flat(out)).toContain("Most likely March 1968");
}, 300_000);

test("a folder gives a line a photo; a broken one is told and the others go on", async () => {
  const photos = join(folder(), "photos");
  mkdirSync(photos);
  const jpeg = await label(join(photos, "b.jpg"));
  writeFileSync(join(photos, "a.jpg"), jpeg.slice(0, 1500));
  writeFileSync(join(photos, "notes.txt"), "no photo");
  const {code, out, err} = await ticking(["read", photos, "--json"]);
  const lines = out.trim().split("\n").map((line) => JSON.parse(line) as {path: string; reading: {rows: unknown[]} | null; problems: {code: string}[]; rows: {readings: unknown[]}[]; marks: unknown[]});
  expect([code, lines.length]).toEqual([0, 2]);
  expect(lines[0]).toMatchObject({path: join(photos, "a.jpg"), reading: null, problems: [{code: "reader/not-photo"}]});
  expect(lines[1]!.reading!.rows).toHaveLength(3);
  expect(lines[1]!.rows).toHaveLength(2);
  expect(err).toContain("1 of 2 photos read");
}, 300_000);

test("what is not there, an empty folder, an unknown maker and an unknown label kind are told before anything is read", async () => {
  const here = folder();
  const path = join(here, "label.jpg");
  writeFileSync(path, "no photo");
  mkdirSync(join(here, "empty"));
  const tries = await Promise.all([
    ticking(["read", join(here, "none.jpg")]), ticking(["read", join(here, "empty")]),
    ticking(["read", path, "--maker", "marowfield"]), ticking(["read", path, "--maker", "marrowfield", "--label", "green-sattin"]),
  ]);
  expect(tries.map(({code}) => code)).toEqual([2, 2, 2, 2]);
  expect(tries.map(({err}) => flat(err))).toEqual([
    expect.stringContaining("there is no such file"), expect.stringContaining("there is no photo in this folder"),
    expect.stringContaining("did you mean marrowfield?"), expect.stringContaining("none of the makers' books lists a label kind “green-sattin”"),
  ]);
}, 300_000);

test("refitting without settled rows says what to do", async () => {
  const data = join(folder(), "shop");
  await ticking(["rack", "add", "rulebooks/demo/garments/0147.yaml", "--data", data]);
  const {code, err} = await ticking(["read", "refit", "--try", "--data", data]);
  expect([code, flat(err)]).toEqual([2, expect.stringContaining("no row of a photo has been settled yet")]);
}, 300_000);
