// Sales that came with the demo are invented: as long as they are kept, every price says so.
import type {Store} from "../../store/store.ts";
import {saleQuerySchema} from "../../store/model.ts";

/** The setting that says how many sales came with the demo. */
export const demoSalesKey = "demo.sales";

/** How the note of each of them begins. */
const invented = "invented for the demo";

/** A caution for prices; null when no sale of the demo is kept. */
export async function demoCaution(store: Pick<Store, "setting" | "findSales">): Promise<string | null> {
  if (!Number((await store.setting(demoSalesKey)) ?? 0)) return null;
  const {total} = await store.findSales(saleQuerySchema.parse({text: invented, own: false, limit: 1}));
  return total === 0 ? null : `${total} of the sales kept here are invented for the demo: begin with an empty rack before you price real garments.`;
}
