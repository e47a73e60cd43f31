// The books in use, made ready once and kept until an edition is saved or a month begins; and the same as JSON for the screens.
import {createHash} from "node:crypto";
import {gzipSync} from "node:zlib";
import {month, type Book, type MonthIndex} from "../engine/index.ts";
import {booksInUse, booksSavedKey} from "../commands/rack/books-in-use.ts";
import {makeWorld, type World} from "../commands/world.ts";
import type {Store} from "../store/store.ts";

export interface BooksUsed {
  readonly world: () => Promise<World>;
  /** The books as JSON, packed and not, with a tag that changes when they do. */
  readonly json: () => Promise<{readonly text: string; readonly packed: Buffer; readonly tag: string}>;
}

export function makeBooksUsed(store: Store, shipped: readonly Book[], clock: () => Date): BooksUsed {
  let made: {readonly key: string; readonly world: World} | null = null;
  let printed: {readonly world: World; readonly text: string; readonly packed: Buffer; readonly tag: string} | null = null;
  const world = async () => {
    const today = monthNow(clock());
    const key = `${today} ${await store.setting(booksSavedKey)}`;
    if (made?.key === key) return made.world;
    const fresh = makeWorld(booksInUse(shipped, await store.editions()), today);
    made = {key, world: fresh};
    return fresh;
  };
  return {
    world,
    async json() {
      const now = await world();
      if (printed?.world === now) return printed;
      const text = JSON.stringify(now.books);
      return (printed = {world: now, text, packed: gzipSync(text), tag: `"${createHash("sha256").update(text).digest("base64url").slice(0, 22)}"`});
    },
  };
}

export const monthNow = (now: Date): MonthIndex => month(now.getFullYear(), now.getMonth() + 1);
