// A rack for ways in that have no server: it dates its garments itself, at once.
import {makeWorld, type World} from "../world.ts";
import {dateOdds} from "../worth/date-odds.ts";
import {booksInUse} from "./books-in-use.ts";
import {dateUndated} from "./date-undated.ts";
import {examineJson} from "./examine-json.ts";
import {dateAll, type Rack} from "./rack.ts";

/** @param given  the store, the books that come with the tool, who asks, and when */
export async function openRack(given: Pick<Rack, "store" | "shipped" | "now" | "who"> & Pick<World, "today">): Promise<Rack> {
  const {store, shipped, now, who, today} = given;
  const world = makeWorld(booksInUse(shipped, await store.editions()), today);
  const rack: Rack = {
    store, world, shipped, now, who,
    date: async (garments) => dateAll(garments, world, now),
    examine: async (input) => examineJson(input, world),
    weigh: async (garment, looks) => dateOdds(garment, world, looks),
    dateLater: (ids) => dateUndated(ids, rack),
  };
  return rack;
}
