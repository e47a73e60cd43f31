// Sales made ready once, for pricing many garments.
import {cpiUs} from "../index/cpi-us.ts";
import type {PriceIndex} from "../index/price-index.ts";
import {huberCentre} from "../num/huber-location.ts";
import {columnsOf, dayOf, type Columns, type KeptSale} from "./columns.ts";
import {kindModel, type KindModel} from "./kind-model.ts";

/** Sales of one currency as they stand on one day. Keep it until a sale changes. */
export interface Comparables {
  readonly currency: string;
  readonly today: string;
  /** How many sales could be used. */
  readonly size: number;
  readonly leftOut: readonly {readonly why: string; readonly count: number}[];
  readonly index: PriceIndex | null;
  readonly columns: Columns;
  /** What is learned of a kind, worked out when first asked for. */
  model(kind: number): KindModel;
  /** Rows of a garment's own sales. */
  rowsOf(garment: string): readonly number[];
}

export interface ComparablesOptions {
  readonly currency: string;
  /** 2026-11-25 */
  readonly today: string;
  /** What money was worth; left out: the index at hand for the currency, if any; null: prices as they were paid. */
  readonly index?: PriceIndex | null;
}

/** A price so many times above or below the middle of its kind is a slip of the pen or another thing. Own choice. */
const farOff = Math.log(30);
/** From so many sales of a kind on, far-off prices are left out. */
const enoughToTell = 8;

/**
 * Makes sales ready. Sales that cannot be used are left out and counted, by reason; nothing is thrown.
 * @cost  about 0.1 s for 100,000 sales, and up to a second more when a garment of a kind is first priced
 */
export function makeComparables(kept: readonly KeptSale[], {currency, today, index = currency === cpiUs.currency ? cpiUs : null}: ComparablesOptions): Comparables {
  const leftOut = new Map<string, number>();
  const out = (why: string) => leftOut.set(why, (leftOut.get(why) ?? 0) + 1);
  const whole = kept.filter(({removed, sale}) => {
    const why = removed ? "removed" : sale.price.currency !== currency ? `in another currency than ${currency}` : sale.price.cents <= 0 ? "without a price above nothing" : sale.soldOn > today ? "sold after today" : isReversed(sale) ? "made until before made from" : null;
    if (why && !removed) out(why);
    return why === null;
  });
  const usable = withoutFarOff(whole, () => out("priced far from all others of their kind: look for a slip of the pen"));
  const columns = columnsOf(usable, dayOf(today), index);
  const models = new Map<number, KindModel>();
  const own = new Map<string, number[]>();
  columns.sales.forEach(({garment}, row) => {
    if (garment !== null) own.set(garment, [...(own.get(garment) ?? []), row]);
  });
  return {
    currency, today, size: usable.length, leftOut: [...leftOut].map(([why, count]) => ({why, count})), index, columns,
    model(kind) {
      let model = models.get(kind);
      if (!model) models.set(kind, (model = kindModel(columns, kind)));
      return model;
    },
    rowsOf: (garment) => own.get(garment) ?? [],
  };
}

const isReversed = ({madeFrom, madeUntil}: KeptSale["sale"]) => madeFrom !== null && madeUntil !== null && madeFrom > madeUntil;

function withoutFarOff(sales: readonly KeptSale[], out: () => void): KeptSale[] {
  const logs = new Map<string, number[]>();
  const kindOf = ({sale}: KeptSale) => sale.kind.trim().toLowerCase();
  for (const kept of sales) {
    const list = logs.get(kindOf(kept)) ?? [];
    list.push(Math.log(kept.sale.price.cents));
    logs.set(kindOf(kept), list);
  }
  const bounds = new Map([...logs].filter(([, list]) => list.length >= enoughToTell).map(([kind, list]) => {
    const {centre, spread} = huberCentre(list);
    return [kind, {centre, most: Math.max(farOff, 5 * spread)}];
  }));
  return sales.filter((kept) => {
    const bound = bounds.get(kindOf(kept));
    const far = bound !== undefined && Math.abs(Math.log(kept.sale.price.cents) - bound.centre) > bound.most;
    if (far) out();
    return !far;
  });
}
