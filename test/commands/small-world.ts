// The small world of tests: the invented maker of test/fixtures, a fixed month.
import {fileURLToPath} from "node:url";
import {makeWorld} from "../../commands/world.ts";
import {month} from "../../engine/index.ts";
import {loadBook} from "../../rulebooks/load.ts";

const loaded = loadBook(fileURLToPath(new URL("../fixtures/wickerlow.yaml", import.meta.url)));
if (loaded.problems) throw new Error(JSON.stringify(loaded.problems));

export const world = makeWorld([loaded.book], month(2026, 11));
