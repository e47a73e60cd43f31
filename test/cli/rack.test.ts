// ticking rack, run as a person runs it: keeping, finding, going back, tables, backups and archives.
import {createHash} from "node:crypto";
import {readdirSync, readFileSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import sharp from "sharp";
import {expect, test} from "vitest";
import {folder, ticking} from "./run-ticking.ts";

const garment = "rulebooks/demo/garments/0147.yaml";
const flat = (text: string) => text.replace(/\s+/g, " ");
const shop = () => join(folder(), "shop");
const on = (data: string, ...args: readonly string[]) => ticking(["rack", args[0]!, "--data", data, ...args.slice(1)]);

test("a garment is added with its photo, found by a code, shown, and seen in its history", async () => {
  const data = shop();
  const photo = join(folder(), "front.png");
  writeFileSync(photo, await sharp({create: {width: 30, height: 20, channels: 3, background: "#456"}}).png().toBuffer());
  const added = await on(data, "add", garment, "--place", "rail 3", "--tag", "worn", "--asked", "85.00 EUR", "--photo", photo, "--who", "Ana");
  expect([added.code, added.err]).toEqual([0, ""]);
  expect(added.out).toContain("0147 hangs on the rack: March 1968 (likely)");
  const [list, none, show, history] = await Promise.all([on(data, "list", "412-03"), on(data, "list", "412-04"), on(data, "show", "0147", "--json"), on(data, "history", "0147")]);
  expect(flat(list.out)).toContain("0147 March 1968 (likely) Straight-leg trousers, worn label · rail 3 · to examine · 85.00 EUR · #worn");
  expect(none.out).toContain("0 garments.");
  const record = JSON.parse(show.out) as {content: {asked: unknown; photos: {photo: string}[]}};
  expect(record.content.asked).toEqual({cents: 8500, currency: "EUR"});
  expect(record.content.photos[0]!.photo).toBe(createHash("sha256").update(readFileSync(photo)).digest("hex"));
  expect(history.out).toMatch(/1 .* UTC · Ana · added/);
});

test("a table goes in and comes out; undo goes back, and is a step itself", async () => {
  const data = shop();
  const table = join(folder(), "stock.csv");
  writeFileSync(table, "number,maker,rows,shelf\n7,marrowfield,3 8 21,attic\n8,marrowfield,,cellar\n");
  const takes = ["--take", "number=garment", "--take", "shelf=place"];
  const tried = await on(data, "import", table, "--try", ...takes);
  expect([tried.code, tried.out]).toEqual([0, expect.stringContaining("2 garments could be taken over. Nothing was saved.")]);
  expect((await on(data, "import", table, ...takes)).out).toContain("2 garments hang on the rack now");
  expect(flat((await on(data, "list", "--place", "attic")).out)).toMatch(/^ 7 March 1978 .*1 garment\. $/);
  const out = await on(data, "export", "attic");
  expect(out.out.split("\r\n")[1]).toMatch(/^7,,marrowfield,.*3 8 21.*,attic,/);
  const undone = await on(data, "undo", "7", "1");
  expect(undone.out).toContain("7 is as it was at step 1; that is step 3 now");
  expect((await on(data, "history", "7")).out).toContain("not dated");
});

test("an archive comes back on a new rack; its own archive is the same", async () => {
  const [data, again, files] = [shop(), shop(), folder()];
  await on(data, "add", garment);
  const archive = join(files, "a.zip");
  expect((await on(data, "archive", archive)).out).toContain("holds 1 garment with 1 step of history");
  expect(flat((await on(again, "restore", archive)).out)).toContain("1 garment, 0 photos and 0 editions of books.");
  await on(again, "archive", join(files, "b.zip"));
  expect(readFileSync(join(files, "b.zip")).equals(readFileSync(archive))).toBe(true);
  const [check, twice, over] = await Promise.all([on(again, "check"), on(again, "restore", archive), on(data, "archive", archive)]);
  expect(check.out).toContain("The rack is sound");
  expect([twice.code, over.code]).toEqual([2, 2]);
  expect(twice.err).toContain("would mix with them");
  expect(over.err).toContain("To fix: choose another name");
});

test("check finds a damaged photo, and ends with 2", async () => {
  const data = shop();
  const photo = join(folder(), "front.png");
  writeFileSync(photo, await sharp({create: {width: 30, height: 20, channels: 3, background: "#456"}}).png().toBuffer());
  await on(data, "add", garment, "--photo", photo);
  const original = readdirSync(join(data, "photos"), {recursive: true, encoding: "utf8"}).find((name) => /[0-9a-f]{64}$/.test(name))!;
  writeFileSync(join(data, "photos", original), "damaged");
  const check = await on(data, "check");
  expect([check.code, check.err]).toEqual([2, expect.stringContaining("gone or damaged; garment 0147 shows it")]);
});

test("a garment is taken off the rack and put back by its number; the first change of the day makes a backup, the others none", async () => {
  const data = shop();
  await on(data, "add", garment);
  const backups = () => readdirSync(join(data, "backups"));
  const [first] = backups();
  expect(first).toMatch(/^rack-.*Z\.sqlite$/);
  expect((await on(data, "remove", "0147")).out).toContain("0147 is off the rack");
  expect((await on(data, "list", "--removed")).out).toContain("1 garment.");
  expect((await on(data, "put-back", "0147")).out).toContain("hangs on the rack again");
  expect(backups()).toEqual([first]);
  expect((await on(data, "backup")).out).toContain("Backed up:");
  expect((await on(data, "backup", "--list")).out).toContain(".sqlite");
});

test("what cannot be is said all at once", async () => {
  const data = shop();
  const list = await on(data, "list");
  const [flags, add, twice] = await Promise.all([
    on(data, "list", "--from", "sixties", "--at-least", "80", "--limit", "0"),
    on(data, "add", "nothing.yaml", "--asked", "much"),
    on(data, "add", garment, garment),
  ]);
  expect([list.code, flags.code, add.code, twice.code]).toEqual([2, 2, 2, 2]);
  expect(list.err).toContain("there is no rack in this folder");
  expect(flags.err.trim().split("\n").map((line) => line.split(":")[0])).toEqual(["--from", "--at-least", "--limit"]);
  expect(add.err.trim().split("\n")).toHaveLength(2);
  expect(twice.err).toContain("stands at rulebooks/demo/garments/0147.yaml already");
});
