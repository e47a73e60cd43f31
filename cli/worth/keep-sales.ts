// ticking sales remove and ticking sales put-back.
import {putBackSale, removeSale} from "../../commands/worth/save-sale.ts";
import * as say from "../../commands/worth/problems.ts";
import {NeedsMending} from "../ending.ts";
import {counted} from "../rack/counted.ts";
import {done, withRackToChange, type RackFlags} from "../rack/with-rack.ts";

export async function removeSales(ids: readonly string[], flags: RackFlags): Promise<void> {
  process.stdout.write(`${counted(await each(removeSale, ids, flags), "sale")} out of the list; the history stays, and ticking sales put-back puts them there again.\n`);
}

export async function putBackSales(ids: readonly string[], flags: RackFlags): Promise<void> {
  process.stdout.write(`${counted(await each(putBackSale, ids, flags), "sale")} in the list again.\n`);
}

/** All are looked for before the first is changed. */
function each(command: typeof removeSale, ids: readonly string[], flags: RackFlags): Promise<number> {
  return withRackToChange(flags, false, async (rack) => {
    const found = await Promise.all(ids.map((id) => rack.store.sale(id)));
    const missing = ids.filter((_, i) => !found[i]);
    if (missing.length > 0) throw new NeedsMending(missing.map(say.noSale));
    for (const record of found) await done(command, {id: record!.id, base: record!.rev}, rack);
    return found.length;
  });
}
