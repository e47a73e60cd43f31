// ticking paper, run as a person runs it: papers made, a printed sheet checked, and what is wrong told.
import {existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import sharp from "sharp";
import {afterAll, beforeAll, expect, test} from "vitest";
import {pagesOf} from "../paper/pdf-pages.ts";
import {codesIn} from "../paper/read-codes.ts";
import {folder, ticking} from "./run-ticking.ts";

const above = mkdtempSync(join(tmpdir(), "ticking-paper-"));
const data = join(above, "shop");
const paper = (...args: readonly string[]) => ticking(["paper", args[0]!, "--data", data, ...args.slice(1)]);
beforeAll(async () => {
  const photo = join(above, "front.png");
  writeFileSync(photo, await sharp({create: {width: 60, height: 80, channels: 3, background: "#456"}}).png().toBuffer());
  const added = await ticking(["rack", "add", "--data", data, "rulebooks/demo/garments/0147.yaml", "--photo", photo, "--asked", "85.00 EUR", "--standing", "for sale"]);
  expect([added.code, added.err]).toEqual([0, ""]);
  expect((await ticking(["rack", "add", "--data", data, "rulebooks/demo/garments/0187.yaml"])).code).toBe(0);
});

afterAll(() => rmSync(above, {recursive: true, force: true}));

test("a sheet is made as PDF; its code is found true on the rack, beside an export, and no longer once a mark has changed", async () => {
  const at = folder();
  const made = await paper("sheet", "--number", "0147", "-o", join(at, "0147.pdf"));
  expect([made.code, made.err]).toEqual([0, `1 dating sheet in ${join(at, "0147.pdf")}.\n`]);
  const pages = await pagesOf(readFileSync(join(at, "0147.pdf")));
  const [code] = (await Promise.all(pages.map(async (page) => codesIn(await page.render(2.5))))).flat();
  const exported = join(at, "rack.json");
  await ticking(["rack", "export", "--data", data, "-o", exported]);
  const [here, file] = await Promise.all([paper("check", code!.text), ticking(["paper", "check", code!.text, "--record", exported, "--json", "--data", join(at, "no-rack")])]);
  expect([here.code, here.out]).toEqual([0, expect.stringContaining("The sheet says what is kept.")]);
  expect(JSON.parse(file.out)).toMatchObject({result: "same", garment: {number: "0147"}});
  expect(existsSync(join(at, "no-rack"))).toBe(false);
  writeFileSync(exported, readFileSync(exported, "utf8").replaceAll("412-0318", "412-0319"));
  expect((await paper("check", code!.text, "--record", exported)).out).toContain("does not say what is kept");
});

test("a sheet as a web page is one file; many sheets go together or each by itself", async () => {
  const at = folder();
  await paper("sheet", "--number", "0147", "-o", join(at, "0147.html"));
  expect(readFileSync(join(at, "0147.html"), "utf8")).toMatch(/^<!doctype html>[^]*data:image\/jpeg;base64[^]*March 1968/);
  expect((await paper("sheet", "--each", join(at, "each"), "--size", "letter", "--photos", "0")).err).toContain("2 dating sheets in");
  expect(readdirSync(join(at, "each")).map((name) => name.slice(0, 5))).toEqual(["0147-", "0187-"]);
  expect((await paper("sheet", "--standing", "for sale", "-o", join(at, "all.pdf"))).err).toContain("1 dating sheet in");
});

test("tags, listings and a wall chart", async () => {
  const at = folder();
  const [tags, listing, data0, chart] = await Promise.all([
    paper("tags", "--format", "ticket", "--code", "bars", "-o", join(at, "tags.pdf")), paper("listing", "--number", "0147"), paper("listing", "--form", "json"),
    ticking(["paper", "chart", "test/fixtures/wickerlow.yaml", "-o", join(at, "wall.pdf")]),
  ]);
  expect([tags.code, tags.err, chart.code]).toEqual([0, `2 hang tags in ${join(at, "tags.pdf")}.\n`, 0]);
  expect((await codesIn(await (await pagesOf(readFileSync(join(at, "tags.pdf"))))[0]!.render(4))).map(({text}) => text).sort()).toEqual(["0147", "0187"]);
  expect(listing.out).toMatch(/^Straight-leg trousers, worn label, no\. 0147\n[^]*Price: 85\.00 EUR/);
  expect((JSON.parse(data0.out) as {sku: string}[]).map(({sku}) => sku)).toEqual(["0147", "0187"]);
  expect((await pagesOf(readFileSync(join(at, "wall.pdf"))))[0]!.height).toBeGreaterThan(1190);
});

test("what cannot be made ends with what to mend, and leaves no file", async () => {
  const at = folder();
  const runs: readonly (readonly [Promise<{code: number | null; err: string}>, string])[] = [
    [paper("sheet", "--number", "9999"), "9999"], [paper("sheet", "nothing-fits-this"), "no garment is chosen"], [paper("sheet", "--photos", "many"), "no number of photos"],
    [paper("sheet", "-o", join(at, "two.html")), "a web page shows one sheet"], [paper("tags", "--format", "round"), "Allowed choices are"], [paper("check", "hello"), "no code of a dating sheet"],
    [paper("check", "AAAA-BBBB-CCCC"), "give the garment's number"], [paper("sheet", "--number", "0147", "-o", join(at, "none", "x.pdf")), "cannot be written"], [paper("check", "AAAA-BBBB-CCCC", "--number", "0147", "--on", "yesterday"), "--on"],
    [ticking(["paper", "chart", "marowfield", "-o", join(at, "x.pdf")]), "marowfield"],
  ];
  for (const [run, said] of runs) {
    const {code, err} = await run;
    expect([code, err]).toEqual([2, expect.stringContaining(said)]);
  }
  expect(readdirSync(at)).toEqual([]);
});
