// Empties a rack: what hangs there is put aside as a backup, and a fresh one begins, with the demo or with nothing.
import {join} from "node:path";
import {z} from "zod";
import {booksSavedKey} from "../commands/rack/books-in-use.ts";
import {settingKey, settingNames} from "../commands/rack/settings.ts";
import type {Garment} from "../engine/index.ts";
import {printPath} from "../rulebooks/place.ts";
import {checkShape} from "../rulebooks/shape.ts";
import {partsOf} from "../store/open.ts";
import {emptyRack as emptyFolder} from "../store/sqlite/empty.ts";
import type {Store} from "../store/store.ts";
import {demoKey, hangDemo, type DemoShop} from "./demo.ts";
import {passphraseKey} from "./passphrase.ts";
import {Refused} from "./problem-details.ts";
import {readJson} from "./read-body.ts";
import type {Route} from "./route.ts";

export interface EmptyGiven {
  readonly store: Store;
  readonly folder: string;
  readonly demo: readonly Garment[];
  readonly demoShop: DemoShop | null;
  readonly dateLater: (ids: readonly string[]) => void;
}

/** Settings that are the owner's and not the rack's. */
const ownSettings = [passphraseKey, booksSavedKey, ...settingNames.map(settingKey)];

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

/** Own rule books and photos stay, so that the backup is whole. */
async function emptyRack({store, folder, demo, demoShop, dateLater}: EmptyGiven, withDemo: boolean, now: Date): Promise<string> {
  const backup = `before-emptying-${now.toISOString().replace(/[:.]/g, "-")}.sqlite`;
  await store.backup(join(partsOf(folder).backups, backup));
  emptyFolder(folder, ownSettings);
  if (withDemo) dateLater(await hangDemo(store, demo, now.toISOString(), demoShop));
  else await store.setSetting(demoKey, "[]");
  return backup;
}
