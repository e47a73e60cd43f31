// Books named on the command line: by the id of one that is loaded, or by a path.
import {existsSync} from "node:fs";
import {loadBook} from "../../rulebooks/load.ts";
import type {Book} from "../../engine/index.ts";
import type {World} from "../../commands/world.ts";
import {makeWorld} from "../../commands/world.ts";
import {NeedsMending} from "../ending.ts";
import {openWorld, type WorldFlags} from "../shared.ts";

/** A book from a file or folder, with all its problems when there are some. */
export function openBook(path: string): Book {
  const {book, problems} = loadBook(path);
  if (problems) throw new NeedsMending(problems);
  return book;
}

/** The world in which a named book is found, and the book's id there. A path is loaded alone; other names are ids of loaded books. */
export function worldWith(name: string, flags: WorldFlags): {world: World; id: string} {
  const isPath = /[/\\]|\.ya?ml$/i.test(name) || (existsSync(name) && /\./.test(name));
  if (!isPath) return {world: openWorld(flags), id: name};
  const book = openBook(name);
  const {today, since} = openWorld({...flags, books: [], shipped: false});
  return {world: makeWorld([book], today, since), id: book.book};
}
