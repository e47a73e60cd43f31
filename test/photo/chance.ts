// Draws of the kinds that made-up photos need.
import type {Random} from "../simulate/random.ts";

export const between = (random: Random, [least, most]: readonly [number, number]) => least + (most - least) * random.next();
export const eitherWay = (random: Random, most: number) => between(random, [-most, most]);
/** A bell of spread 1 about 0. */
export const bell = (random: Random) => Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
