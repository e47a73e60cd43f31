// Ids of garments: in the order in which they were added, and never twice.
import {randomInt} from "node:crypto";

/** Nine characters of 36. */
const room = 36 ** 9;
let last = {at: "", chance: 0};

/** Time first, so that ids sort by age; then chance, so that no two programs make the same; within one moment it grows. */
export function newId(at: string): string {
  const chance = at === last.at && last.chance < room - 2000 ? last.chance + randomInt(1, 1000) : randomInt(2 ** 46);
  last = {at, chance};
  return nine(Date.parse(at)) + nine(chance);
}

const nine = (number: number) => number.toString(36).padStart(9, "0");
