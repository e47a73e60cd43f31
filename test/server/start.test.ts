// The whole server on a port: a fresh rack with its demo, dated by workers; emptied and begun anew; ended and opened again.
import {copyFileSync, mkdtempSync, readdirSync, renameSync, utimesSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {expect, test} from "vitest";
import type {RackPage} from "../../store/model.ts";
import {listBackups} from "../../store/backup/backups.ts";
import {openStore, partsOf} from "../../store/open.ts";
import {startServer, type Started} from "../../server/start.ts";
import {world} from "../commands/small-world.ts";

const demo = ["grey-tape", "blue-satin", "no-such-label"].map((label, i) => ({garment: `d${i}`, maker: "wickerlow", saw: {label}}));
const fresh = () => mkdtempSync(join(tmpdir(), "ticking-rack-"));
const start = (folder: string, more: object = {}) => startServer({folder, shipped: world.books, demo, address: "127.0.0.1", port: 0, screens: "/nowhere", version: "1", ...more});

async function ask<T>({port}: Started, path: string, body?: unknown): Promise<T> {
  const response = await fetch(`http://127.0.0.1:${port}/api/${path}`, body === undefined ? {} : {method: "POST", body: JSON.stringify(body), headers: {"content-type": "application/json"}});
  return (await response.json()) as T;
}

test("a fresh rack begins with the demo, which is dated while the server answers already", async () => {
  const server = await start(fresh());
  try {
    expect(await ask(server, "about")).toMatchObject({garments: 3, demo: true, open: true});
    expect(Object.keys((await ask<{paths: object}>(server, "openapi.json")).paths)).toEqual(expect.arrayContaining(["/api/rack/empty", "/api/photos", "/api/photos/{photo}/{size}"]));
    await server.settled();
    const {rows} = await ask<RackPage>(server, "rack?sort=number&descending=false");
    expect(rows.map(({number, dating, tags}) => [number, dating !== null, tags])).toEqual([["d0", true, ["demo"]], ["d1", true, ["demo"]], ["d2", false, ["demo"]]]);
    await ask(server, "garments", {content: {garment: {garment: "own", maker: "wickerlow", saw: {label: "grey-tape", rows: ["3 8 21"]}}}});
    expect(await ask(server, "about")).toMatchObject({garments: 4, demo: false});
    expect((await ask<RackPage>(server, "rack?text=own")).rows[0]!.dating!.words).toBe("March 1968");
  } finally {
    await server.close();
  }
});

test("what was kept is there after the server ended, and the demo is not hung up twice", async () => {
  const folder = fresh();
  const first = await start(folder);
  await ask(first, "garments", {content: {garment: {garment: "own", saw: {}}}});
  await first.close();
  const second = await start(folder);
  expect(await ask(second, "about")).toMatchObject({garments: 4});
  await second.close();
});

test("a backup of the day is made at the start, and one a day is enough", async () => {
  const folder = fresh();
  for (let i = 0; i < 2; i++) {
    const server = await start(folder);
    await server.close();
    expect(await listBackups(folder)).toHaveLength(1);
  }
  const at = new Date(Date.now() - 86_400_000).toISOString();
  const {name} = (await listBackups(folder))[0]!;
  renameSync(join(partsOf(folder).backups, name), join(partsOf(folder).backups, `rack-${at.slice(0, 19).replaceAll(":", "-")}Z.sqlite`));
  await (await start(folder)).close();
  expect(await listBackups(folder)).toHaveLength(2);
});

test("what a killed server left half-written is taken away after a day, and not before", async () => {
  const folder = fresh();
  await (await start(folder)).close();
  const {backups} = partsOf(folder);
  for (const name of ["old.part", "new.part", "old.sqlite"]) writeFileSync(join(backups, name), "");
  for (const name of ["old.part", "old.sqlite"]) utimesSync(join(backups, name), new Date(0), new Date(0));
  await (await start(folder)).close();
  expect(readdirSync(backups)).toEqual(expect.arrayContaining(["new.part", "old.sqlite"]));
  expect(readdirSync(backups)).not.toContain("old.part");
});

test("garments whose dating was interrupted are dated at the next start", async () => {
  const folder = fresh();
  const store = await openStore(folder);
  await store.save({id: null, base: 0, content: {garment: {garment: "left", maker: "wickerlow", saw: {label: "grey-tape"}}, place: "", standing: "kept", paid: null, asked: null, tags: [], photos: [], dating: null, sizes: null, state: null, money: null, labels: []}, who: "owner", what: "imported", at: "2026-11-05T00:00:00.000Z"});
  await store.close();
  const server = await start(folder);
  await server.settled();
  expect(await ask<RackPage>(server, "rack")).toMatchObject({total: 1, rows: [{number: "left", dating: {maker: "wickerlow"}}]});
  await server.close();
});

test("an emptied rack is empty and stays so, keeps the own books, and what hung there lies in the backups", async () => {
  const folder = fresh();
  const server = await start(folder);
  const {yaml} = await ask<{yaml: string}>(server, "books/wickerlow/1");
  await ask(server, "books", {yaml});
  await ask(server, "garments", {content: {garment: {garment: "own", saw: {}}}});
  const {backup} = await ask<{backup: string}>(server, "rack/empty", {keep: "nothing"});
  expect(await ask(server, "about")).toMatchObject({garments: 0, demo: false});
  expect(await ask(server, "books")).toMatchObject([{book: "wickerlow", edition: 2, own: true}]);
  await server.close();
  const again = await start(folder);
  expect(await ask(again, "about")).toMatchObject({garments: 0});
  expect(await ask(again, "rack/empty", {keep: "some"})).toMatchObject({status: 422});
  await ask(again, "rack/empty", {keep: "demo"});
  expect(await ask(again, "about")).toMatchObject({garments: 3, demo: true});
  await again.close();
  const elsewhere = fresh();
  copyFileSync(join(folder, "backups", backup), partsOf(elsewhere).database);
  const old = await openStore(elsewhere);
  expect((await old.walk(null, 10)).map(({content}) => content.garment.garment).sort()).toEqual(["d0", "d1", "d2", "own"]);
  await old.close();
});

test("what others ask while the rack is emptied waits, and is answered", async () => {
  const server = await start(fresh());
  const [, ...statuses] = await Promise.all([ask(server, "rack/empty", {keep: "nothing"}), ...Array.from({length: 30}, async () => (await fetch(`http://127.0.0.1:${server.port}/api/rack`)).status)]);
  expect(new Set(statuses)).toEqual(new Set([200]));
  await server.close();
});

test("a port that is taken is told by the system's own code, and nothing is left running", async () => {
  const first = await start(fresh());
  await expect(start(fresh(), {port: first.port})).rejects.toMatchObject({code: "EADDRINUSE"});
  await first.close();
});

test("with a passphrase the interface is closed until somebody signs in", async () => {
  const server = await start(fresh(), {wide: true, passphraseHash: async () => "scrypt$131072$8$1$AAAA$AAAA"});
  expect(await ask(server, "about")).toMatchObject({open: false, garments: 0});
  expect(await ask(server, "rack")).toMatchObject({status: 401});
  await server.close();
});
