// Sales made ready for pricing and kept in memory: read whole once, then only what changed; made ready anew when a sale or the day changed.
import {makeComparables, type Comparables} from "../../worth/index.ts";
import type {SalesSince, Store} from "../../store/store.ts";
import {sameSale} from "./same-sale.ts";

interface Known {
  mark: number | null;
  readonly sales: Map<string, SalesSince["sales"][number]>;
  /** By currency. */
  readonly ready: Map<string, {readonly mark: number; readonly comparables: Comparables}>;
}

const knownOf = new WeakMap<Store["salesSince"], Known>();

/** @param today  2026-11-25 */
export async function comparablesOf({salesSince}: Pick<Store, "salesSince">, currency: string, today: string): Promise<Comparables> {
  let known = knownOf.get(salesSince);
  if (!known) knownOf.set(salesSince, (known = {mark: null, sales: new Map(), ready: new Map()}));
  const mark = take(known, await salesSince(known.mark));
  const ready = known.ready.get(currency);
  if (ready && ready.mark === mark && ready.comparables.today === today) return ready.comparables;
  const comparables = makeComparables(onceEach([...known.sales.values()]), {currency, today});
  known.ready.set(currency, {mark, comparables});
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
