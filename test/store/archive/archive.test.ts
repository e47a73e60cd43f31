// Archives: everything comes back, bit for bit; whatever is not as ticking made it is refused whole.
import {createHash} from "node:crypto";
import {existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {dirname, join} from "node:path";
import sharp from "sharp";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {openPromise} from "yauzl";
import {restoreArchive} from "../../../store/archive/restore-archive.ts";
import {writeArchive} from "../../../store/archive/write-archive.ts";
import {rackQuerySchema, saleQuerySchema} from "../../../store/model.ts";
import {openStore, partsOf} from "../../../store/open.ts";
import {originalPath, photoFiles} from "../../../store/photo/photo-files.ts";
import {at, content, dated} from "../body.ts";
import {sale, saleSave} from "../sales-contract.ts";
import {rawZip, type RawEntry} from "./raw-zip.ts";

const home = mkdtempSync(join(tmpdir(), "ticking-archive-"));
let count = 0;
const fresh = (ending = "") => join(home, `${++count}${ending}`);
afterAll(() => rmSync(home, {recursive: true, force: true}));

const sha = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const codes = (answer: {readonly problems?: readonly {readonly code: string}[] | undefined}) => answer.problems?.map(({code}) => code);

/** A rack with all that can be on one. */
async function filled(): Promise<string> {
  const folder = fresh();
  const store = await openStore(folder);
  const {photo} = await photoFiles(partsOf(folder).photos).add(await sharp({create: {width: 40, height: 30, channels: 3, background: "#456"}}).jpeg().toBuffer(), "a.jpg", at);
  await store.addPhoto(photo!);
  const ids: string[] = [];
  for (let i = 0; i < 12; i++) {
    const body = content(`nº ${i}`, {place: i % 2 ? "Dachboden" : "rail 1", tags: ["x", `t${i}`], photos: i === 3 ? [{photo: photo!.photo}] : [], dating: i % 3 ? dated([0.25, 0.75]) : null}, {label: "green-satin", "21": "odd name", rows: ["412-0318"]});
    ids.push((await store.save({id: null, base: 0, content: body, who: "Zoë", what: "added", at: `2026-06-01T10:00:${String(i).padStart(2, "0")}.000Z`})).saved!.id);
  }
  await store.save({id: ids[1]!, base: 1, content: content("1b"), who: "owner", what: "changed", at: "2026-06-02T00:00:00.000Z"});
  await store.save({id: ids[2]!, base: 1, content: content("2"), removed: true, who: "owner", what: "removed", at: "2026-06-02T00:00:00.000Z"});
  for (const edition of [1, 2]) await store.addEdition({book: "mine", edition, title: "Mine", yaml: `book: mine\nedition: ${edition} # é\n`, savedAt: at, savedBy: "owner"});
  await store.addEdition({book: "../..", edition: 1, title: "Odd", yaml: "", savedAt: at, savedBy: "owner"});
  await store.save({id: ids[4]!, base: 1, content: content("4", {standing: "sold", money: {sold: {on: "2026-05-01", price: {cents: 22000, currency: "USD"}}}}), who: "owner", what: "sold", at: "2026-06-02T00:00:00.000Z"});
  const written = (await store.saveSales(["a", "b", "c"].map((note) => saleSave(null, 0, sale({note}))))).map(({saved}) => saved!.id);
  await store.saveSales([saleSave(written[0]!, 1, sale({note: "changed"})), saleSave(written[1]!, 1, sale({note: "b"}), {removed: true, what: "removed"})]);
  await store.setSetting("demo.garments", "[]");
  await store.setSetting("passphrase.hash", "very secret");
  await store.close();
  return folder;
}

async function entriesOf(archive: string): Promise<RawEntry[]> {
  const zip = await openPromise(archive, {autoClose: false});
  const entries: RawEntry[] = [];
  for await (const entry of zip.eachEntry()) {
    const pieces: Buffer[] = [];
    for await (const piece of await zip.openReadStreamPromise(entry)) pieces.push(piece as Buffer);
    entries.push({name: entry.fileName, bytes: Buffer.concat(pieces)});
  }
  zip.close();
  return entries;
}

let folder: string;
let archive: string;
let entries: readonly RawEntry[];
beforeAll(async () => {
  folder = await filled();
  archive = fresh(".zip");
  await writeArchive(folder, archive);
  entries = await entriesOf(archive);
});

describe("an archive", () => {
  test("comes back on an empty rack, and its own archive is the same, byte for byte", async () => {
    const other = fresh();
    const {restored} = await restoreArchive(archive, other);
    expect(restored).toMatchObject({garments: 12, steps: 15, sales: 3, photos: 1, books: 3});
    const again = fresh(".zip");
    await writeArchive(other, again);
    expect(sha(readFileSync(again))).toBe(sha(readFileSync(archive)));
    const [one, two] = [await openStore(folder), await openStore(other)];
    const [here, there] = [await one.walk(null, 100), await two.walk(null, 100)];
    expect(there).toEqual(here);
    for (const {id} of here) expect(await two.history(id)).toEqual(await one.history(id));
    for (const given of [{text: "dachb"}, {tag: "t5"}, {from: 1966, until: 1966, atLeast: 0.2}, {removed: true}]) {
      const query = rackQuerySchema.parse({...given, sort: "number"});
      expect(await two.search(query)).toEqual(await one.search(query));
    }
    expect(await two.editions()).toEqual(await one.editions());
    expect(await two.walkSales(null, 100)).toEqual(await one.walkSales(null, 100));
    for (const {id} of await one.walkSales(null, 100)) expect(await two.saleHistory(id)).toEqual(await one.saleHistory(id));
    expect((await two.findSales(saleQuerySchema.parse({own: true}))).total).toBe(1);
    const [photo] = await two.photos(null, 10);
    expect(await photoFiles(partsOf(other).photos).isSound(photo!.photo)).toBe(true);
    expect(await two.check()).toEqual([]);
    expect(readdirSync(join(partsOf(other).photos, "waiting"))).toEqual([]);
    await one.close();
    await two.close();
  });

  test("keeps secrets on the machine, and leaves those of the other machine alone", async () => {
    expect(entries.some(({bytes}) => Buffer.from(bytes).includes("very secret"))).toBe(false);
    const other = fresh();
    const store = await openStore(other);
    await store.setSetting("passphrase.hash", "of this machine");
    await restoreArchive(archive, other);
    expect([await store.setting("passphrase.hash"), await store.setting("demo.garments")]).toEqual(["of this machine", "[]"]);
    await store.close();
  });

  test("is taken over under the eyes of another who has the rack open", async () => {
    const other = fresh();
    const store = await openStore(other);
    expect((await store.search(rackQuerySchema.parse({}))).total).toBe(0);
    await restoreArchive(archive, other);
    expect((await store.search(rackQuerySchema.parse({}))).total).toBe(11);
    await store.close();
  });

  test("can be read without ticking: lines of JSON, books and photos", () => {
    const text = (name: string) => Buffer.from(entries.find((entry) => entry.name === name)!.bytes).toString();
    expect(entries.map(({name}) => name).slice(0, 7)).toEqual(["ticking.json", "garments.jsonl", "history.jsonl", "sales.jsonl", "photos.jsonl", "books.jsonl", "settings.jsonl"]);
    expect(text("history.jsonl").trimEnd().split("\n").map((line) => (JSON.parse(line) as {rev: number}).rev)).toHaveLength(15);
    expect(text("books/mine-2.yaml")).toBe("book: mine\nedition: 2 # é\n");
    const photo = entries.find(({name}) => name.startsWith("photos/"))!;
    expect(photo.name).toBe(`photos/${sha(photo.bytes)}`);
  });

  test("of the first form, before there were sales, is taken as it is", async () => {
    const listed = JSON.parse(entries[0]!.bytes.toString()) as {files: {name: string}[]; sales?: number};
    const {sales: _, ...first} = {...listed, version: 1, files: listed.files.filter(({name}) => name !== "sales.jsonl")};
    const file = fresh(".zip");
    writeFileSync(file, changed({"ticking.json": () => Buffer.from(JSON.stringify(first)), "sales.jsonl": null}));
    const other = fresh();
    expect((await restoreArchive(file, other)).restored).toMatchObject({garments: 12, steps: 15, sales: 0});
    const store = await openStore(other);
    expect((await store.walkSales(null, 10)).map(({garment}) => garment !== null)).toEqual([true]);
    await store.close();
  });

  test("leaves out a photo that is damaged on the disk, and says which", async () => {
    const damaged = await filled();
    const [photo] = await (await openStore(damaged)).photos(null, 1);
    writeFileSync(originalPath(partsOf(damaged).photos, photo!.photo), "other");
    const file = fresh(".zip");
    expect((await writeArchive(damaged, file)).missing).toEqual([photo!.photo]);
    expect((await restoreArchive(file, fresh())).restored).toMatchObject({garments: 12, photos: 1});
  });

  test("leaves nothing behind in the folder of the rack", () => {
    expect(readdirSync(partsOf(folder).backups)).toEqual([]);
    expect(readdirSync(home).filter((name) => name.endsWith(".part"))).toEqual([]);
  });
});

/** Changes files of the good archive; null takes one away. */
const changed = (changes: Readonly<Record<string, ((bytes: Buffer) => Uint8Array) | null>>, more: readonly RawEntry[] = []) =>
  rawZip([...entries.flatMap(({name, bytes}) => (changes[name] === null ? [] : [{name, bytes: changes[name]?.(Buffer.from(bytes)) ?? bytes}])), ...more]);
const edit = (from: string | RegExp, to: string) => (bytes: Buffer) => Buffer.from(bytes.toString().replace(from, to));

/** As if whoever changed the data had mended the list of files, too. */
function forged(name: string, change: (bytes: Buffer) => Uint8Array): Buffer {
  const bytes = change(Buffer.from(entries.find((entry) => entry.name === name)!.bytes));
  return changed({
    [name]: () => bytes,
    "ticking.json": (list) => {
      const manifest = JSON.parse(list.toString()) as {files: {name: string; bytes: number; sha256: string}[]};
      return Buffer.from(JSON.stringify({...manifest, files: manifest.files.map((file) => (file.name === name ? {name, bytes: bytes.length, sha256: sha(bytes)} : file))}));
    },
  });
}

describe("is refused whole, with nothing left behind:", () => {
  const anything = Buffer.from("x");
  const cases: readonly [string, () => Uint8Array, string][] = [
    ["no zip at all", () => Buffer.from("hello"), "archive/unreadable"],
    ["an archive cut off", () => readFileSync(archive).subarray(0, 900), "archive/unreadable"],
    ["another zip", () => rawZip([]), "archive/not-ours"],
    ["another list of files", () => changed({"ticking.json": () => Buffer.from("{}")}), "archive/not-ours"],
    ["a list that is no JSON", () => changed({"ticking.json": () => Buffer.from("{")}), "archive/not-ours"],
    ["a newer form", () => changed({"ticking.json": edit('"version":2', '"version":3')}), "archive/newer"],
    ["a path that climbs out", () => changed({}, [{name: "photos/../../evil", bytes: anything}]), "archive/strange-entry"],
    ["a path that climbs out backwards", () => changed({}, [{name: "..\\evil", bytes: anything}]), "archive/strange-entry"],
    ["an absolute path", () => changed({}, [{name: "/tmp/evil", bytes: anything}]), "archive/strange-entry"],
    ["a drive", () => changed({}, [{name: "C:/evil", bytes: anything}]), "archive/strange-entry"],
    ["a file that has no place", () => changed({}, [{name: "photos/readme.txt", bytes: anything}]), "archive/strange-entry"],
    ["a photo that is not listed", () => changed({}, [{name: `photos/${sha(anything)}`, bytes: anything}]), "archive/strange-entry"],
    ["a file twice", () => changed({}, [{name: "history.jsonl", bytes: anything}]), "archive/entry-twice"],
    ["a missing file", () => changed({"history.jsonl": null}), "archive/entry-missing"],
    ["a missing photo", () => changed(Object.fromEntries(entries.filter(({name}) => name.startsWith("photos/")).map(({name}) => [name, null]))), "archive/entry-missing"],
    ["changed data", () => changed({"history.jsonl": edit("Dachboden", "Dachbodem")}), "archive/entry-changed"],
    ["longer data", () => changed({"history.jsonl": edit("Dachboden", "Dachboden!")}), "archive/entry-changed"],
    ["a changed photo", () => changed(Object.fromEntries(entries.filter(({name}) => name.startsWith("photos/")).map(({name, bytes}) => [name, () => Buffer.alloc(bytes.length)]))), "archive/entry-changed"],
    ["a size that is a lie", () => rawZip(entries.map((entry) => (entry.name === "history.jsonl" ? {...entry, packed: true, size: 10} : entry))), "archive/entry-changed"],
    ["a bomb", () => rawZip(entries.map((entry) => (entry.name === "history.jsonl" ? {...entry, bytes: Buffer.alloc(50_000_000), packed: true} : entry))), "archive/unpacks-too-large"],
    ["a photo larger than any", () => changed({}, [{name: `photos/${"ab".repeat(32)}`, bytes: anything, packed: true, size: 70_000_000}]), "archive/unpacks-too-large"],
    ["a garment that no garment can be", () => forged("history.jsonl", edit('"standing":"to examine"', '"standing":"flying"')), "archive/bad-line"],
    ["a line that is no JSON", () => forged("history.jsonl", (bytes) => Buffer.concat([bytes, Buffer.from("{\n")])), "archive/bad-line"],
    ["a step left out", () => forged("history.jsonl", edit(/.*"rev":2.*\n/, "")), "archive/contradiction"],
    ["a first step left out", () => forged("history.jsonl", edit(/^.*\n/, "")), "archive/contradiction"],
    ["a gap in a history", () => forged("history.jsonl", edit('"rev":2', '"rev":3')), "archive/bad-line"],
    ["a sale that no sale can be", () => forged("sales.jsonl", edit('"cents":12000', '"cents":1.5')), "archive/bad-line"],
    ["a gap in the history of a sale", () => forged("sales.jsonl", edit('"rev":2', '"rev":3')), "archive/bad-line"],
    ["no sales in a form that has them", () => changed({"sales.jsonl": null}), "archive/entry-missing"],
    ["garments that do not follow from their history", () => forged("garments.jsonl", edit("Dachboden", "Keller")), "archive/contradiction"],
    ["a secret to be planted", () => forged("settings.jsonl", () => Buffer.from('{"key":"passphrase.hash","value":"mine"}\n')), "archive/bad-line"],
    ["a list that names no data", () => changed({"ticking.json": (list) => Buffer.from(list.toString().replace(/\{"name":"history.jsonl"[^}]*\},/, ""))}), "archive/entry-missing"],
  ];
  test.each(cases)("%s", async (_, make, code) => {
    const file = fresh(".zip");
    writeFileSync(file, make());
    const place = fresh();
    const above = readdirSync(home).length;
    expect(codes(await restoreArchive(file, place))).toContain(code);
    expect(existsSync(place)).toBe(false);
    expect(readdirSync(home)).toHaveLength(above);
    expect(existsSync(join(dirname(home), "evil"))).toBe(false);
  });

  test("a bad archive for a rack that is there and empty leaves it as it was", async () => {
    const other = fresh();
    const store = await openStore(other);
    const file = fresh(".zip");
    writeFileSync(file, forged("garments.jsonl", edit("Dachboden", "Keller")));
    expect(codes(await restoreArchive(file, other))).toEqual(["archive/contradiction"]);
    expect([await store.walk(null, 1), await store.photos(null, 1), await store.editions()]).toEqual([[], [], []]);
    expect(readdirSync(partsOf(other).photos, {recursive: true, withFileTypes: true}).filter((entry) => entry.isFile())).toEqual([]);
    await store.close();
  });

  test("a good one for a rack on which garments hang", async () => {
    expect(codes(await restoreArchive(archive, folder))).toEqual(["archive/rack-not-empty"]);
  });

  test("a good one for a rack with another text of an edition", async () => {
    const other = fresh();
    const store = await openStore(other);
    await store.addEdition({book: "mine", edition: 1, title: "Mine", yaml: "other", savedAt: at, savedBy: "owner"});
    expect(codes(await restoreArchive(archive, other))).toEqual(["archive/other-book"]);
    expect(await store.walk(null, 1)).toEqual([]);
    await store.close();
  });
});
