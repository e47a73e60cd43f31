// Dates garments that are kept undated: after an import, and whatever an interrupted run left behind.
import type {GarmentRecord} from "../../store/model.ts";
import type {Rack} from "./rack.ts";

/** Garments dated and saved in one step: few enough that others get their turn in between. */
const perShare = 20;

/** Garments that cannot be dated, that were removed, or that somebody saved meanwhile stay as they are. */
export async function dateUndated(ids: readonly string[], rack: Pick<Rack, "store" | "date" | "who" | "now">): Promise<void> {
  const {store, who, now: at} = rack;
  for (let from = 0; from < ids.length; from += perShare) {
    const found = await Promise.all(ids.slice(from, from + perShare).map((id) => store.get(id)));
    const undated = found.filter((record): record is GarmentRecord => record !== null && !record.removed && record.content.dating === null);
    const dated = await rack.date(undated.map(({content}) => content.garment));
    for (const [i, {id, rev, content}] of undated.entries()) {
      const dating = dated[i]!.dating;
      if (dating) await store.save({id, base: rev, content: {...content, dating}, who, what: "dated", at});
    }
  }
}
