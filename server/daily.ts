// Makes the backup of the day while the server runs: at the start, and whenever a day begins.
import {backUpWhenDue} from "../store/backup/backups.ts";
import type {Store} from "../store/store.ts";

/** How often it is looked whether one is due. */
const everyMs = 15 * 60_000;

/**
 * @param onFault  told when a backup cannot be made; the server goes on, and it is tried again
 * @returns        ends it, once a backup under way is done
 */
export function backUpDaily(store: Store, folder: string, onFault: (error: unknown) => void): () => Promise<void> {
  let turn: Promise<unknown> = Promise.resolve();
  const look = () => {
    turn = turn.then(() => backUpWhenDue(store, folder, new Date().toISOString())).catch(onFault);
  };
  look();
  const timer = setInterval(look, everyMs).unref();
  return async () => {
    clearInterval(timer);
    await turn;
  };
}
