// Empties a rack: what hangs there is put aside as a backup, and a fresh one begins, with the demo or with nothing.
import {rm} from "node:fs/promises";
import {join} from "node:path";
import {z} from "zod";
import {booksSavedKey} from "../commands/rack/books-in-use.ts";
import type {Garment} from "../engine/index.ts";
import {printPath} from "../rulebooks/place.ts";
import {checkShape} from "../rulebooks/shape.ts";
import type {BookEdition} from "../store/model.ts";
import {partsOf} from "../store/open.ts";
import type {Store} from "../store/store.ts";
import {demoKey, hangDemo} from "./demo.ts";
import type {HeldStore} from "./held-store.ts";
import {passphraseKey} from "./passphrase.ts";
import {Refused} from "./problem-details.ts";
import {readJson} from "./read-body.ts";
import type {Route} from "./route.ts";

export interface EmptyGiven {
  readonly held: HeldStore;
  readonly folder: string;
  readonly demo: readonly Garment[];
  readonly dateLater: (ids: readonly string[]) => void;
}

/** Settings that are the owner's and not the rack's. */
const ownSettings = [passphraseKey, booksSavedKey];

const inputSchema = z.strictObject({keep: z.enum(["demo", "nothing"]).describe("what hangs on the rack afterwards")});
const outputSchema = z.strictObject({backup: z.string().describe("name of the file in the folder of backups")});

export function emptyRoute(given: EmptyGiven): Route {
  return {
    name: "rack.empty",
    summary: "begin with an empty rack; what hung there is put aside as a backup",
    method: "post",
    path: "/api/rack/empty",
    shapes: {path: {}, query: {}, body: inputSchema, answer: {status: 200, mime: "application/json", schema: outputSchema}, refusals: [400, 413, 415, 422]},
    async answer(context) {
      const {fits, problems} = checkShape(inputSchema, await readJson(context.req.raw, 10_000), (path) => printPath(path) || "input");
      if (problems) throw new Refused(422, problems);
      return context.json({backup: await emptyRack(given, fits.keep === "demo", new Date())});
    },
  };
}

/** The own rule books stay in use, and photos stay in their folder, so that the backup is whole. */
async function emptyRack({held, folder, demo, dateLater}: EmptyGiven, withDemo: boolean, now: Date): Promise<string> {
  const {store} = held;
  const {database, backups} = partsOf(folder);
  const backup = `before-emptying-${now.toISOString().replace(/[:.]/g, "-")}.sqlite`;
  const editions: BookEdition[] = [];
  const settings = new Map<string, string | null>();
  const keep = async (old: Store) => {
    editions.push(...(await old.editions()));
    for (const key of ownSettings) settings.set(key, await old.setting(key));
    await old.backup(join(backups, backup));
  };
  await held.renew(keep, async () => void (await Promise.all(["", "-wal", "-shm"].map((ending) => rm(database + ending, {force: true})))));
  for (const edition of editions) await store.addEdition(edition);
  for (const [key, value] of settings) await store.setSetting(key, value);
  if (withDemo) dateLater(await hangDemo(store, demo, now.toISOString()));
  else await store.setSetting(demoKey, "[]");
  return backup;
}
