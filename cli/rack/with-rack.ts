// Opens the rack of a folder for one verb, and closes it again however the verb ends.
import {existsSync} from "node:fs";
import {openRack} from "../../commands/rack/open-rack.ts";
import type {Rack} from "../../commands/rack/rack.ts";
import {performOnRack, type RackCommand} from "../../commands/rack/rack-command.ts";
import type {z} from "zod";
import {shippedBooks} from "../../rulebooks/load.ts";
import {backUpWhenDue} from "../../store/backup/backups.ts";
import {StoreFault} from "../../store/fault.ts";
import {rackQuerySchema, type GarmentRecord} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import {openStore, partsOf} from "../../store/open.ts";
import {instantNow, thisMonth} from "../clock.ts";
import {dataFolder} from "../data-folder.ts";
import {NeedsMending, orMend} from "../ending.ts";
import * as say from "./problems.ts";

export interface RackFlags {
  readonly data?: string;
  readonly who?: string;
}

/** All that a verb needs that only looks. */
export interface OpenFolder {
  readonly folder: string;
  readonly store: Store;
  /** UTC. */
  readonly now: string;
}

export type OpenRack = Rack & OpenFolder;

/**
 * Others may have the same rack open, a server for example.
 * @param begin  whether a rack is begun when there is none
 */
export async function withStore<T>({data}: RackFlags, begin: boolean, work: (open: OpenFolder) => Promise<T>): Promise<T> {
  const folder = dataFolder(data);
  if (!begin && !existsSync(partsOf(folder).database)) throw new NeedsMending([say.noRack(folder)]);
  return mending(async () => {
    const store = await openStore(folder);
    try {
      return await work({folder, store, now: instantNow()});
    } finally {
      await store.close();
    }
  });
}

/** The same with rule books, which take their time to load. */
export async function withRack<T>(flags: RackFlags, begin: boolean, work: (rack: OpenRack) => Promise<T>): Promise<T> {
  const shipped = shippedBooks();
  if (shipped.problems) throw new NeedsMending(shipped.problems);
  return withStore(flags, begin, async ({folder, store, now}) => work({folder, ...(await openRack({store, shipped: shipped.books, now, who: flags.who ?? "owner", today: thisMonth()}))}));
}

/** The same for verbs that change the rack; the backup of the day is made first. */
export function withRackToChange<T>(flags: RackFlags, begin: boolean, work: (rack: OpenRack) => Promise<T>): Promise<T> {
  return withRack(flags, begin, async (rack) => {
    await backUpWhenDue(rack.store, rack.folder, rack.now);
    return work(rack);
  });
}

/** What the store finds wrong is the owner's to mend: a full disk, a folder that is closed. */
export async function mending<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw error instanceof StoreFault ? new NeedsMending(error.problems) : error;
  }
}

/** Runs a command on the rack; what it refuses ends the run. */
export async function done<Input extends z.ZodObject, T>(command: RackCommand<Input, T>, input: unknown, rack: Rack): Promise<T> {
  const reply = await performOnRack(command, input, rack);
  return orMend(reply.refused ? {problems: reply.problems} : reply);
}

/** A garment by the owner's number, or by its id; a removed one when no other has the number. */
export async function garmentNamed(name: string, {store}: Pick<Rack, "store">): Promise<GarmentRecord> {
  const found = (await store.byNumber(name)) ?? (await store.get(name)) ?? (await removedNamed(name, store));
  if (!found) throw new NeedsMending([say.noSuchGarment(name)]);
  return found;
}

/** The one that was removed last. */
async function removedNamed(number: string, store: Store): Promise<GarmentRecord | null> {
  const {rows} = await store.search(rackQuerySchema.parse({text: number.slice(0, 200), removed: true, limit: 500}));
  const row = rows.find((one) => one.number === number);
  return row ? store.get(row.id) : null;
}
