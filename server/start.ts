// Starts everything that a served rack needs: workers, the demo of a fresh rack, dating in the background, and the app on its port.
import type {Book, Garment} from "../engine/index.ts";
import {rackQuerySchema} from "../store/model.ts";
import {openStore, partsOf} from "../store/open.ts";
import {photoFiles} from "../store/photo/photo-files.ts";
import type {Store} from "../store/store.ts";
import type {Rack} from "../commands/rack/rack.ts";
import {makeApp, rackOf, type AppOptions} from "./app.ts";
import {archiveRoutes} from "./archive-routes.ts";
import {makeBackground} from "./background.ts";
import {makeBooksUsed, type BooksUsed} from "./books-used.ts";
import {clearParts} from "./clear-parts.ts";
import {makeCrew, type Crew} from "./crew.ts";
import {backUpDaily} from "./daily.ts";
import {hangDemo, type DemoShop} from "./demo.ts";
import {emptyRoute} from "./empty.ts";
import {giveTurns} from "./give-turns.ts";
import {listen} from "./listen.ts";
import {paperFiles} from "./paper-files.ts";
import {makePress} from "./paper-press.ts";
import {paperRoutes} from "./paper-routes.ts";
import {makePhotoReader} from "./photo-reader.ts";
import {photoRoutes} from "./photo-routes.ts";
import {readRoutes} from "./read-routes.ts";

export interface StartOptions extends Pick<AppOptions, "screens" | "version" | "names" | "wide" | "onFault"> {
  /** Of the rack; made when it is not there. */
  readonly folder: string;
  /** Asked once the rack is open; null: nobody has to sign in. */
  readonly passphraseHash?: (store: Store) => Promise<string | null>;
  readonly shipped: readonly Book[];
  /** Hung up on a rack that was never used. */
  readonly demo: readonly Garment[];
  /** The sales and prices that come with the demo; null: none. */
  readonly demoShop?: DemoShop | null;
  readonly address: string;
  readonly port: number;
}

export interface Started {
  readonly address: string;
  readonly port: number;
  /** Resolves when no garment waits to be dated any more. */
  readonly settled: () => Promise<void>;
  /** Answers what is under way, then ends everything. */
  close(): Promise<void>;
}

/** @throws the system's error with its code when the port cannot be had; a StoreFault when the folder cannot be used */
export async function startServer({folder, shipped, demo, demoShop = null, address, port, passphraseHash = async () => null, ...rest}: StartOptions): Promise<Started> {
  const onFault = rest.onFault ?? (() => {});
  const store = giveTurns(await openStore(folder));
  const crew = makeCrew();
  const photoReader = makePhotoReader();
  const used = makeBooksUsed(store, shipped, () => new Date());
  const rack = async (): Promise<Rack> => {
    const [world, now] = [await used.world(), new Date().toISOString()];
    return rackOf({store, world, shipped, now, who: "ticking"}, crew);
  };
  const background = makeBackground(rack, onFault);
  let endBackups = async () => {};
  const [press, papers, photos] = [makePress(), paperFiles(), photoFiles(partsOf(folder).photos)];
  const closeAll = async () => {
    await endBackups();
    const stopped = background.stop();
    await crew.close();
    await photoReader.close();
    await press.close();
    await papers.close();
    await stopped;
    await store.close();
  };
  try {
    const more = [
      emptyRoute({store, folder, demo, demoShop, dateLater: background.add}),
      ...photoRoutes(store, photos),
      ...readRoutes(store, used, photoReader),
      ...paperRoutes({rack, press, files: papers, readPhoto: photos.read}),
      ...archiveRoutes(folder, async () => background.add(await undated(store))),
    ];
    const app = makeApp({...rest, store, shipped, used, more, passphraseHash: await passphraseHash(store), examiners: crew, dateLater: background.add});
    const listening = await listen(app, address, port);
    warmUp(crew, used);
    await clearParts(partsOf(folder).backups, Date.now());
    await hangDemo(store, demo, new Date().toISOString(), demoShop);
    background.add(await undated(store));
    endBackups = backUpDaily(store, folder, onFault);
    return {
      address: listening.address,
      port: listening.port,
      settled: background.settled,
      async close() {
        await listening.close();
        await closeAll();
      },
    };
  } catch (error) {
    await closeAll();
    throw error;
  }
}

/** The first examination of a worker takes seconds, for it loads the books: better before somebody waits for it. */
function warmUp(crew: Crew, used: BooksUsed): void {
  const garment: Garment = {garment: "first", saw: {}};
  // It may be ended while it is at it.
  used.world().then((world) => crew.examine({garment, trace: false}, world)).catch(() => {});
}

/** Garments that hang undated. */
async function undated(store: Store): Promise<string[]> {
  const ids: string[] = [];
  for (let offset = 0; ; offset += 500) {
    const {rows} = await store.search(rackQuerySchema.parse({sureness: "undated", sort: "number", descending: false, offset, limit: 500}));
    ids.push(...rows.map(({id}) => id));
    if (rows.length < 500) return ids;
  }
}
