// The odds of a garment's date, remembered: while a price is haggled over, the same garment is asked about again and again.
import type {Garment} from "../../engine/index.ts";
import type {Rack} from "../rack/rack.ts";
import type {World} from "../world.ts";
import type {DateOdds} from "./date-odds.ts";

const mostKept = 500;
const kept = new WeakMap<World, Map<string, DateOdds | null>>();

/** Null for a garment that cannot be dated by the books in use: then its time is unknown. */
export async function oddsOf(garment: Garment, looks: boolean, {world, weigh}: Pick<Rack, "world" | "weigh">): Promise<DateOdds | null> {
  let known = kept.get(world);
  if (!known) kept.set(world, (known = new Map()));
  const {saw, maker, market, type} = garment;
  const key = JSON.stringify([saw, maker, market, type, looks]);
  const there = known.get(key);
  if (there !== undefined) return there;
  const odds = (await weigh(garment, looks)).odds ?? null;
  if (known.size >= mostKept) known.delete(known.keys().next().value!);
  known.set(key, odds);
  return odds;
}
