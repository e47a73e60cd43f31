// The demo that a fresh rack begins with: which garments belong to it, and hanging it up.
import type {Garment} from "../engine/index.ts";
import {contentSchema} from "../store/model.ts";
import type {Store} from "../store/store.ts";

/** The setting that names the garments of the demo; nothing stands there on a rack that never had one. */
export const demoKey = "demo.garments";

const demoIds = async (store: Store): Promise<readonly string[]> => JSON.parse((await store.setting(demoKey)) ?? "[]") as string[];

/** Whether nothing but the demo hangs on the rack. */
export async function isDemoOnly(store: Store, garments: number): Promise<boolean> {
  const ids = await demoIds(store);
  if (garments === 0 || garments > ids.length) return false;
  const hanging = (await Promise.all(ids.map((id) => store.get(id)))).filter((record) => record && !record.removed);
  return hanging.length === garments;
}

/** Hangs the demo on a rack that was never used; its garments are dated like others that hang undated. */
export async function hangDemo(store: Store, garments: readonly Garment[], at: string): Promise<readonly string[]> {
  if ((await store.setting(demoKey)) !== null || (await store.walk(null, 1)).length > 0) return [];
  const saved = await store.saveAll(garments.map((garment) => ({id: null, base: 0, content: contentSchema.parse({garment, tags: ["demo"]}), who: "ticking", what: "hung up with the demo", at})));
  const ids = saved.map((one) => one.saved!.id);
  await store.setSetting(demoKey, JSON.stringify(ids));
  return ids;
}
