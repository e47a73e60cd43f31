// The inputs of the fuzz tests, each told by its number alone, so that any of them can be made again.
import {knownMarks} from "../../engine/index.ts";
import {seeded, type Random} from "../simulate/random.ts";
import {heavyGarment, spoiled} from "./mutate.ts";
import {bookFiles, garmentFiles, jsonLines} from "./seed-inputs.ts";
import {shipped, table, type Target} from "./targets.ts";

export interface Input {
  readonly bytes: Uint8Array;
  /** Whether the whole finding is asked for, not the date alone. */
  readonly whole: boolean;
}

const marks = [...knownMarks(shipped).keys()].filter((mark) => mark !== "rows");
const makers = shipped.filter(({kind}) => kind === "maker").map(({book}) => book);
const heavy = (random: Random) => JSON.stringify(heavyGarment(random, marks, makers));

const starts: Readonly<Record<Target, (random: Random) => string>> = {
  garment: (random) => (random.happens(0.2) ? heavy(random) : random.pick(garmentFiles)),
  table: (random) => random.pick(table.lines),
  list: (random) => (random.happens(0.2) ? heavy(random) : random.pick(jsonLines)),
  book: (random) => bookFiles[random.happens(0.9) ? 0 : random.whole(0, bookFiles.length - 1)]!,
};

/** One input in thirty is left as it is. */
export function inputAt(target: Target, seed: number, number: number): Input {
  const random = seeded(seed * 1_000_003 + number);
  const text = starts[target](random);
  return {bytes: random.happens(1 / 30) ? Buffer.from(text) : spoiled(text, random), whole: random.happens(1 / 8)};
}
