// The demo that a fresh rack begins with: which garments belong to it, and hanging it up.
import type {Garment} from "../engine/index.ts";
import {demoSalesKey} from "../commands/worth/demo-sales.ts";
import {contentSchema, saleQuerySchema} from "../store/model.ts";
import {saleSchema} from "../worth/model.ts";
import type {Store} from "../store/store.ts";

/** The setting that names the garments of the demo; nothing stands there on a rack that never had one. */
export const demoKey = "demo.garments";

const demoIds = async (store: Store): Promise<readonly string[]> => JSON.parse((await store.setting(demoKey)) ?? "[]") as string[];

/** What the demo's garments cost and brought, by number, and sales of others; as a file gives it. */
export interface DemoShop {
  readonly garments: Readonly<Record<string, unknown>>;
  readonly sales: readonly unknown[];
}

/** Whether nothing but the demo hangs on the rack, and no sales but the demo's are written down. */
export async function isDemoOnly(store: Store, garments: number): Promise<boolean> {
  const ids = await demoIds(store);
  if (garments === 0 || garments > ids.length) return false;
  const hanging = (await Promise.all(ids.map((id) => store.get(id)))).filter((record) => record && !record.removed);
  const {total: written} = await store.findSales(saleQuerySchema.parse({own: false, limit: 1}));
  return hanging.length === garments && written <= Number((await store.setting(demoSalesKey)) ?? 0);
}

/** Hangs the demo on a rack that was never used; its garments are dated like others that hang undated. */
export async function hangDemo(store: Store, garments: readonly Garment[], at: string, shop: DemoShop | null = null): Promise<readonly string[]> {
  if ((await store.setting(demoKey)) !== null || (await store.walk(null, 1)).length > 0 || (await store.walkSales(null, 1)).length > 0) return [];
  const [who, what] = ["ticking", "hung up with the demo"];
  const saved = await store.saveAll(garments.map((garment) => ({id: null, base: 0, content: contentSchema.parse({garment, tags: ["demo"], ...(shop?.garments[garment.garment] as object | undefined)}), who, what, at})));
  const sales = await store.saveSales((shop?.sales ?? []).map((sale) => ({id: null, base: 0, sale: saleSchema.parse(sale), who, what: "written down with the demo", at})));
  const ids = saved.map((one) => one.saved!.id);
  await store.setSetting(demoSalesKey, String(sales.length));
  await store.setSetting(demoKey, JSON.stringify(ids));
  return ids;
}
