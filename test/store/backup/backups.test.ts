// Backups as files: made while another writes, thinned out, others left alone, and nothing half-made when the disk is full.
import {copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, expect, test} from "vitest";
import {backUpWhenDue, listBackups, makeBackup} from "../../../store/backup/backups.ts";
import {StoreFault} from "../../../store/fault.ts";
import {openStore, partsOf} from "../../../store/open.ts";
import type {Store} from "../../../store/store.ts";
import {at, content} from "../body.ts";

const home = mkdtempSync(join(tmpdir(), "ticking-backup-"));
let count = 0;
const folder = () => join(home, String(++count));
afterAll(() => rmSync(home, {recursive: true, force: true}));
const add = (store: Store, number: string) => store.save({id: null, base: 0, content: content(number), who: "owner", what: "added", at});

test("a backup put in the place of the database is the rack as it stood", async () => {
  const path = folder();
  const [store, other] = [await openStore(path), await openStore(path)];
  const {saved} = await add(store, "1");
  const writing = Promise.all(Array.from({length: 20}, (_, i) => add(other, `later ${i}`)));
  const name = await makeBackup(store, path, "2026-06-01T10:20:30.400Z");
  await writing;
  expect(name).toBe("rack-2026-06-01T10-20-30Z.sqlite");
  const again = folder();
  mkdirSync(again);
  copyFileSync(join(partsOf(path).backups, name), partsOf(again).database);
  const restored = await openStore(again);
  expect(await restored.get(saved!.id)).toEqual(saved);
  expect(await restored.check()).toEqual([]);
  await Promise.all([store, other, restored].map((one) => one.close()));
});

test("a day has one automatic backup, and old ones go; what else stands there stays", async () => {
  const path = folder();
  const store = await openStore(path);
  writeFileSync(join(partsOf(path).backups, "before-shape-2.sqlite"), "");
  for (let day = 1; day <= 20; day++) {
    const time = (hour: string) => `2026-06-${String(day).padStart(2, "0")}T${hour}:00:00.000Z`;
    expect(await backUpWhenDue(store, path, time("08"))).toMatch(/^rack-/);
    expect(await backUpWhenDue(store, path, time("18"))).toBeNull();
  }
  // 2026-06-07 and -14 are the Sundays before the last seven days.
  expect((await listBackups(path)).map(({at: time}) => time.slice(8, 10))).toEqual(["07", "14", "15", "16", "17", "18", "19", "20"]);
  expect(existsSync(join(partsOf(path).backups, "before-shape-2.sqlite"))).toBe(true);
  await store.close();
});

test("on a full disk older backups stay, and nothing half-made is left", async () => {
  const path = folder();
  const store = await openStore(path);
  await makeBackup(store, path, at);
  const full: Store = {
    ...store,
    backup: async (file) => {
      writeFileSync(file, "half");
      throw Object.assign(new Error("database or disk is full"), {code: "ERR_SQLITE_ERROR", errcode: 13});
    },
  };
  const made = makeBackup(full, path, "2026-06-02T10:00:00.000Z");
  await expect(made).rejects.toBeInstanceOf(StoreFault);
  await expect(made).rejects.toThrow("the disk is full");
  expect(readdirSync(partsOf(path).backups)).toEqual(["rack-2026-06-01T10-00-00Z.sqlite"]);
  await store.close();
});
