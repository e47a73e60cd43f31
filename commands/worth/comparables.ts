// Sales made ready for pricing and kept in memory: read whole once, then only what changed; made ready anew when a sale or the day changed.
import {makeComparables, type Comparables} from "../../worth/index.ts";
import type {SalesSince, Store} from "../../store/store.ts";
import {sameSale} from "./same-sale.ts";

interface Known {
  mark: number | null;
  readonly sales: Map<string, SalesSince["sales"][number]>;
  /** By currency, and the garment that is left out. */
  readonly ready: Map<string, {readonly mark: number; readonly comparables: Comparables}>;
}

const knownOf = new WeakMap<Store["salesSince"], Known>();

/** So many of them are kept ready: a shop asks in one currency, now and then about something that it sold. */
const mostReady = 4;

/**
 * @param today  2026-11-25
 * @param own    a garment whose own sale must not count, not even in what is learned from all
 */
export async function comparablesOf({salesSince}: Pick<Store, "salesSince">, currency: string, today: string, own: string | null = null): Promise<Comparables> {
  let known = knownOf.get(salesSince);
  if (!known) knownOf.set(salesSince, (known = {mark: null, sales: new Map(), ready: new Map()}));
  const mark = take(known, await salesSince(known.mark));
  const left = own !== null && known.sales.has(own) ? own : "";
  const key = `${currency} ${left}`;
  const ready = known.ready.get(key);
  if (ready && ready.mark === mark && ready.comparables.today === today) return ready.comparables;
  const comparables = makeComparables(onceEach([...known.sales.values()]).filter(({id}) => id !== left), {currency, today});
  known.ready.delete(key);
  if (known.ready.size >= mostReady) known.ready.delete(known.ready.keys().next().value!);
  known.ready.set(key, {mark, comparables});
  return comparables;
}

function take(known: Known, {mark, whole, sales}: SalesSince): number {
  if (whole) known.sales.clear();
  for (const one of sales) {
    if (one.removed) known.sales.delete(one.id);
    else known.sales.set(one.id, one);
  }
  return (known.mark = mark);
}

/** A sale that was written down, too, although the garment on the rack tells it, counts once. */
function onceEach(sales: readonly SalesSince["sales"][number][]): readonly SalesSince["sales"][number][] {
  const told = new Map<string, number>();
  for (const {garment, sale} of sales) if (garment !== null) told.set(sameSale(sale), (told.get(sameSale(sale)) ?? 0) + 1);
  if (told.size === 0) return sales;
  return sales.filter(({garment, sale}) => {
    if (garment !== null) return true;
    const left = told.get(sameSale(sale)) ?? 0;
    if (left > 0) told.set(sameSale(sale), left - 1);
    return left === 0;
  });
}
