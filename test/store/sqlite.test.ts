// The store on SQLite: the contract, and what is its own: files, several processes, older and newer shapes.
import {chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, describe, expect, test} from "vitest";
import {openStore, partsOf} from "../../store/open.ts";
import {columnsOf, wordsOf} from "../../store/sqlite/columns.ts";
import {openDatabase} from "../../store/sqlite/database.ts";
import {emptyRack} from "../../store/sqlite/empty.ts";
import {migrate} from "../../store/sqlite/migrate.ts";
import {migrations} from "../../store/sqlite/migrations.ts";
import {rackQuerySchema, saleQuerySchema} from "../../store/model.ts";
import {at, content, dated} from "./body.ts";
import {contract} from "./contract.ts";
import {sale, saleSave} from "./sales-contract.ts";

const home = mkdtempSync(join(tmpdir(), "ticking-store-"));
let count = 0;
const folder = () => join(home, String(++count));
afterAll(() => rmSync(home, {recursive: true, force: true}));

describe("the store on SQLite", () => contract(() => openStore(folder())));

const save = (number: string, more = {}) => ({id: null, base: 0, content: content(number, more), who: "owner", what: "added", at});

test("two openings of one rack see each other's saves, years included", async () => {
  const path = folder();
  const [one, two] = [await openStore(path), await openStore(path)];
  await one.save(save("1", {dating: dated([1], 1968)}));
  const query = rackQuerySchema.parse({from: 1968, until: 1968});
  expect((await two.search(query)).total).toBe(1);
  await two.save(save("2", {dating: dated([1], 1968)}));
  expect((await one.search(query)).total).toBe(2);
  await one.close();
  await two.close();
});

test("a backup holds what stood at that time, and opens by itself", async () => {
  const store = await openStore(folder());
  const {saved} = await store.save(save("1"));
  const copy = folder();
  mkdirSync(copy);
  await store.backup(partsOf(copy).database);
  await store.save(save("2"));
  const other = await openStore(copy);
  expect(await other.get(saved!.id)).toEqual(saved);
  expect((await other.search(rackQuerySchema.parse({}))).total).toBe(1);
  await store.close();
  await other.close();
});

test("the history can be neither changed nor deleted, not even by hand", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.save(save("1"));
  await store.close();
  const db = openDatabase(partsOf(path).database);
  expect(() => db.exec("UPDATE step SET who = 'nobody'")).toThrow("never changed");
  expect(() => db.exec("DELETE FROM step")).toThrow("never deleted");
  db.close();
});

test("a rack of a newer program is left alone, and says so", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.close();
  const db = openDatabase(partsOf(path).database);
  db.exec(`PRAGMA user_version = ${migrations.length + 3}`);
  db.close();
  await expect(openStore(path)).rejects.toThrow("written by a newer ticking");
});

test("a step to a newer shape puts a copy of the old file aside", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.save(save("1"));
  await store.close();
  const {database, backups} = partsOf(path);
  const db = openDatabase(database);
  migrate(db, path, backups, [...migrations, "ALTER TABLE garment ADD COLUMN later TEXT"]);
  expect(db.one("SELECT later FROM garment")).toEqual({later: null});
  db.close();
  const [copy] = readdirSync(backups);
  const old = openDatabase(join(backups, copy!));
  expect([old.one<{n: number}>("SELECT count(*) AS n FROM garment")!.n, old.one<{user_version: number}>("PRAGMA user_version")!.user_version]).toEqual([1, migrations.length]);
  old.close();
});

test("a step that fails leaves the file as it was", async () => {
  const path = folder();
  await (await openStore(path)).close();
  const db = openDatabase(partsOf(path).database);
  expect(() => migrate(db, path, partsOf(path).backups, [...migrations, "CREATE TABLE half (a); SELECT nonsense"])).toThrow();
  expect(db.one("SELECT name FROM sqlite_master WHERE name = 'half'")).toBeNull();
  db.close();
});

test("a folder that cannot be used is named, with what to do", async () => {
  const path = folder();
  writeFileSync(path, "a file");
  await expect(openStore(path)).rejects.toThrow(/cannot be used .* To fix: .*--data/);
});

test.each<[string, (bytes: Buffer) => Buffer]>([
  ["something else stands in its place", () => Buffer.from("this is no database, however long one reads on in it ".repeat(40))],
  ["it was cut off", (bytes) => bytes.subarray(0, 20_000)],
])("a damaged database is named with its backups, and left as it is: %s", async (_, spoil) => {
  const store = await openStore(folder());
  await store.save(save("1"));
  const path = folder();
  mkdirSync(path);
  const {database} = partsOf(path);
  // A backup is one whole file, without a log from which pages could still be read.
  await store.backup(database);
  await store.close();
  const spoilt = spoil(readFileSync(database));
  writeFileSync(database, spoilt);
  await expect(openStore(path)).rejects.toThrow(/is damaged .* To fix: .*newest of its backups/);
  expect(readFileSync(database).equals(spoilt)).toBe(true);
});

test.skipIf(process.getuid?.() === 0)("a folder that may not be written to is named", async () => {
  const path = folder();
  mkdirSync(path);
  chmodSync(path, 0o500);
  await expect(openStore(path)).rejects.toThrow("cannot be used");
  expect(existsSync(partsOf(path).database)).toBe(false);
});

test("on a full disk a save is refused as a whole, it is said, and later saves go on", async () => {
  const path = folder();
  const store = await openStore(path);
  const {saved} = await store.save(save("1"));
  const db = openDatabase(partsOf(path).database);
  // The limit holds for this opening alone; the disk itself is simulated by SQLite's own answer when there is no page to be had.
  const pages = db.one<{page_count: number}>("PRAGMA page_count")!.page_count;
  db.exec(`PRAGMA max_page_count = ${pages}`);
  expect(() => db.write(() => db.run("INSERT INTO setting (key, value) VALUES ('a', ?)", "x".repeat(1_000_000)))).toThrow("the disk is full");
  expect(db.one("SELECT value FROM setting WHERE key = 'a'")).toBeNull();
  db.close();
  expect(await store.get(saved!.id)).toEqual(saved);
  expect((await store.save(save("2"))).saved).toBeDefined();
  expect(await store.check()).toEqual([]);
  await store.close();
});

test("emptying takes garments and settings away under the eyes of others; books, photos and what is to stay do stay, and history is safe again", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.save(save("1", {tags: ["t"], place: "attic", dating: dated([1], 1968)}));
  const photo = {photo: "ab".repeat(32), mime: "image/jpeg" as const, bytes: 12, width: 3, height: 4, addedAt: at};
  await store.addPhoto(photo);
  await store.addEdition({book: "mine", edition: 1, title: "Mine", yaml: "", savedAt: at, savedBy: "owner"});
  await store.setSetting("a", "1");
  await store.setSetting("b", "2");
  expect((await store.search(rackQuerySchema.parse({from: 1968}))).total).toBe(1);
  emptyRack(path, ["b"]);
  expect((await store.search(rackQuerySchema.parse({}))).values).toEqual({makers: [], types: [], places: [], tags: []});
  expect([await store.walk(null, 9), await store.photos(null, 9), (await store.editions()).length, await store.setting("a"), await store.setting("b")]).toEqual([[], [photo], 1, null, "2"]);
  await store.save(save("2", {dating: dated([1], 1980)}));
  const found = await store.search(rackQuerySchema.parse({from: 1970, text: "2"}));
  expect([found.total, found.years]).toEqual([1, {first: 1980, garments: [1]}]);
  expect((await store.search(rackQuerySchema.parse({until: 1970}))).total).toBe(0);
  expect(await store.check()).toEqual([]);
  await store.close();
  const db = openDatabase(partsOf(path).database);
  expect(() => db.exec("DELETE FROM step")).toThrow("never deleted");
  expect(() => db.exec("UPDATE step SET who = 'nobody'")).toThrow("never changed");
  db.close();
});

test("a rack of the first shape comes forward with all that is on it", async () => {
  const path = folder();
  const {database, backups} = partsOf(path);
  mkdirSync(path);
  const body = content("0147", {place: "attic", dating: dated([0.5, 0.5], 1967)});
  const db = openDatabase(database);
  migrate(db, path, backups, migrations.slice(0, 1));
  const [id, text] = ["abcdefghijkl", JSON.stringify(body)];
  const columns = {n: 1, id, rev: 2, seq: 8, created_at: at, changed_at: at, changed_by: "owner", removed: 0, content: text, ...columnsOf(body)};
  db.run(`INSERT INTO garment (${Object.keys(columns).join(", ")}) VALUES (${Object.keys(columns).map(() => "?").join(", ")})`, ...Object.values(columns));
  db.run("INSERT INTO step (seq, id, rev, at, who, what, removed, content) VALUES (7, ?, 1, ?, 'owner', 'added', 0, ?)", id, at, "{}");
  db.run("INSERT INTO step (seq, id, rev, at, who, what, removed, content) VALUES (8, ?, 2, ?, 'owner', 'changed', 0, ?)", id, at, text);
  db.run("INSERT INTO words (rowid, body) VALUES (1, ?)", wordsOf(body));
  db.close();
  const store = await openStore(path);
  expect(await store.get(id)).toEqual({id, rev: 2, createdAt: at, changedAt: at, changedBy: "owner", removed: false, content: body});
  const found = await store.search(rackQuerySchema.parse({text: "attic", from: 1967, until: 1968}));
  expect([found.total, found.years]).toEqual([1, {first: 1967, garments: [0.5, 0.5]}]);
  expect([await store.check(), readdirSync(backups).length]).toEqual([[], 1]);
  await store.close();
});

test("a rack of the second shape comes forward, its garments with the entries that came later, and sales can be kept", async () => {
  const path = folder();
  const {database, backups} = partsOf(path);
  mkdirSync(path);
  const db = openDatabase(database);
  migrate(db, path, backups, migrations.slice(0, 2));
  const body = content("0147", {place: "attic"});
  const old = JSON.stringify({...body, sizes: undefined, state: undefined, money: undefined, labels: undefined});
  const columns = {n: 1, id: "abcdefghijkl", rev: 1, seq: 7, created_at: at, changed_at: at, changed_by: "owner", removed: 0, ...columnsOf(body)};
  db.run(`INSERT INTO garment (${Object.keys(columns).join(", ")}) VALUES (${Object.keys(columns).map(() => "?").join(", ")})`, ...Object.values(columns));
  db.run("INSERT INTO step (seq, id, rev, at, who, what, removed, content) VALUES (7, 'abcdefghijkl', 1, ?, 'owner', 'added', 0, ?)", at, old);
  db.run("INSERT INTO words (rowid, body) VALUES (1, ?)", wordsOf(body));
  db.close();
  const store = await openStore(path);
  expect((await store.get("abcdefghijkl"))!.content).toEqual(body);
  expect((await store.history("abcdefghijkl"))[0]!.content).toEqual(body);
  await store.saveSales([saleSave(null, 0, sale())]);
  expect([await store.check(), readdirSync(backups).length, (await store.findSales(saleQuerySchema.parse({}))).total]).toEqual([[], 1, 1]);
  await store.close();
});

test("the history of sales can be neither changed nor deleted, not even by hand", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.saveSales([saleSave(null, 0, sale())]);
  await store.close();
  const db = openDatabase(partsOf(path).database);
  expect(() => db.exec("UPDATE sale_step SET who = 'nobody'")).toThrow("never changed");
  expect(() => db.exec("DELETE FROM sale_step")).toThrow("never deleted");
  db.close();
});

test("emptying takes sales away, and who keeps them in memory is told to forget them", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.saveSales([saleSave(null, 0, sale())]);
  const {mark} = await store.salesSince(null);
  emptyRack(path, []);
  expect(await store.salesSince(mark)).toMatchObject({whole: true, sales: []});
  const [added] = await store.saveSales([saleSave(null, 0, sale({note: "new"}))]);
  expect((await store.salesSince(mark)).sales.map(({id}) => id)).toEqual([added!.saved!.id]);
  expect(await store.check()).toEqual([]);
  await store.close();
  const db = openDatabase(partsOf(path).database);
  expect(() => db.exec("DELETE FROM sale_step")).toThrow("never deleted");
  db.close();
});

test("a check finds sales that do not agree with their history or their garment", async () => {
  const spoiled = async (spoil: string) => {
    const path = folder();
    const store = await openStore(path);
    await store.saveSales([saleSave(null, 0, sale())]);
    await store.save(save("1", {standing: "sold", money: {sold: {on: "2026-04-01", price: {cents: 22000, currency: "USD"}}}}));
    const db = openDatabase(partsOf(path).database);
    db.exec(spoil);
    db.close();
    const said = await store.check();
    await store.close();
    return said.join();
  };
  expect(await spoiled("SELECT 1")).toBe("");
  expect(await spoiled("UPDATE sale SET rev = 3 WHERE garment IS NULL")).toMatch(/^sale \w+ and its history differ$/);
  expect(await spoiled("UPDATE sale SET body = '{}' WHERE garment IS NULL")).toMatch(/^sale \w+ and its history differ$/);
  expect(await spoiled("UPDATE sale SET cents = 1 WHERE garment IS NOT NULL")).toMatch(/^garment \w+ and its sale differ$/);
  expect(await spoiled("DELETE FROM sale WHERE garment IS NOT NULL")).toMatch(/^garment \w+ and its sale differ$/);
  expect(await spoiled("UPDATE garment SET standing = 'kept'")).toMatch(/^garment \w+ and its sale differ$/);
});

test("a check finds words that are lost, and garments that do not agree with their history", async () => {
  const spoiled = async (spoil: (db: ReturnType<typeof openDatabase>) => void) => {
    const path = folder();
    const store = await openStore(path);
    const {saved} = await store.save(save("1"));
    await store.save({...save("1", {place: "attic"}), id: saved!.id, base: 1});
    const db = openDatabase(partsOf(path).database);
    spoil(db);
    db.close();
    const said = await store.check();
    await store.close();
    return said.join();
  };
  expect(await spoiled(() => {})).toBe("");
  expect(await spoiled((db) => db.exec("UPDATE garment SET rev = 3"))).toContain("and its history differ");
  expect(await spoiled((db) => db.exec("UPDATE garment SET seq = 1"))).toContain("and its history differ");
  expect(await spoiled((db) => db.exec("DELETE FROM words"))).toContain("cannot be found by its words");
});

test("a check finds pages that are damaged", async () => {
  const path = folder();
  const store = await openStore(path);
  await store.saveAll(Array.from({length: 300}, (_, i) => save(String(i), {place: "x".repeat(150)})));
  const copy = folder();
  mkdirSync(copy);
  const file = partsOf(copy).database;
  await store.backup(file);
  await store.close();
  const bytes = readFileSync(file);
  bytes.fill(0xff, 4096 * 20, 4096 * 24);
  writeFileSync(file, bytes);
  const damaged = await openStore(copy);
  expect((await damaged.check()).join()).toMatch(/page|tree|missing|damaged/i);
  await damaged.close();
});

test("garments that were added in one moment keep their order", async () => {
  const store = await openStore(folder());
  await store.saveAll(Array.from({length: 200}, (_, i) => save(String(i))));
  expect((await store.walk(null, 500)).map(({content: {garment}}) => garment.garment)).toEqual(Array.from({length: 200}, (_, i) => String(i)));
  await store.close();
});
