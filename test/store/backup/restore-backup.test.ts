// A backup as a rack again: with its photos, in a folder of its own, or not at all.
import {existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, expect, test} from "vitest";
import {makeBackup} from "../../../store/backup/backups.ts";
import {restoreBackup} from "../../../store/backup/restore-backup.ts";
import {openStore, partsOf} from "../../../store/open.ts";
import {at, content} from "../body.ts";

const home = mkdtempSync(join(tmpdir(), "ticking-restore-"));
let count = 0;
const folder = () => join(home, String(++count));
afterAll(() => rmSync(home, {recursive: true, force: true}));

/** A rack of one garment, its backup, and a change that came after it. */
async function backedUp() {
  const path = folder();
  const store = await openStore(path);
  const {saved} = await store.save({id: null, base: 0, content: content("1"), who: "owner", what: "added", at});
  mkdirSync(join(partsOf(path).photos, "ab"), {recursive: true});
  writeFileSync(join(partsOf(path).photos, "ab", "photo"), "light");
  const file = join(partsOf(path).backups, await makeBackup(store, path, "2026-06-01T10:20:30.400Z"));
  await store.save({id: saved!.id, base: 1, content: content("1", {place: "attic"}), who: "owner", what: "changed", at});
  await store.close();
  return {path, file, saved: saved!};
}

test("the restored rack is that of the backup, photos and all, and the old one stays as it is", async () => {
  const {path, file, saved} = await backedUp();
  const again = folder();
  expect(await restoreBackup(file, again)).toEqual({garments: 1, photos: true});
  const [restored, old] = [await openStore(again), await openStore(path)];
  expect(await restored.get(saved.id)).toEqual(saved);
  expect((await old.get(saved.id))!.content.place).toBe("attic");
  expect(readFileSync(join(partsOf(again).photos, "ab", "photo"), "utf8")).toBe("light");
  await restored.close();
  await old.close();
});

test("a rack that is there is never written over", async () => {
  const {path, file} = await backedUp();
  const before = readFileSync(partsOf(path).database);
  await expect(restoreBackup(file, path)).rejects.toMatchObject({problems: [{code: "store/rack-there"}]});
  expect(readFileSync(partsOf(path).database).equals(before)).toBe(true);
});

test("a damaged backup leaves no rack behind", async () => {
  const file = join(home, "damaged.sqlite");
  writeFileSync(file, "no database, whatever its name says".repeat(200));
  const again = folder();
  await expect(restoreBackup(file, again)).rejects.toMatchObject({problems: [{code: "store/data-damaged"}]});
  expect(existsSync(partsOf(again).database)).toBe(false);
  expect(readdirSync(again).filter((name) => name.includes("sqlite"))).toEqual([]);
});
