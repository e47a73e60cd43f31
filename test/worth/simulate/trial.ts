// Prices held-out sales from the others, and counts: how often the stated ranges hold them, and how far off the typical price is.
import {makeComparables, priceGarment} from "../../../worth/index.ts";
import {termsSchema} from "../../../worth/model.ts";
import {median} from "../../../worth/num/weighted.ts";
import type {KeptSale} from "../../../worth/price/columns.ts";
import type {Subject} from "../../../worth/index.ts";

export interface Trial {
  readonly priced: number;
  readonly refused: number;
  /** Part of the held-out sales inside the range of eight and of nine in ten. */
  readonly eight: number;
  readonly nine: number;
  /** Median of |log(price / typical)|, of the arithmetic and of a plain median of the same kind. */
  readonly error: number;
  readonly plainError: number;
  /** Median of high over low of the range of nine in ten. */
  readonly width: number;
}

/** @param drift  what a price has moved since a sale, to see the held-out sale as of today; left out: nothing */
export function tryOut(known: readonly KeptSale[], heldOut: readonly KeptSale[], subjectOf: (sale: KeptSale) => Subject, today: string, drift: (sale: KeptSale) => number = () => 0): Trial {
  const currency = known[0]!.sale.price.currency;
  const comparables = makeComparables(known, {currency, today, index: null});
  const terms = termsSchema.parse({currency});
  const logOf = (sale: KeptSale) => Math.log(sale.sale.price.cents) + drift(sale);
  const plain = new Map<string, number>();
  for (const kind of new Set(known.map(({sale}) => sale.kind))) plain.set(kind, median(known.filter(({sale}) => sale.kind === kind).map((sale) => Math.log(sale.sale.price.cents))));
  const [errors, plainErrors, widths]: number[][] = [[], [], []];
  let [eight, nine, refused] = [0, 0, 0];
  for (const sale of heldOut) {
    const {price} = priceGarment(comparables, subjectOf(sale), {terms});
    const range = (share: number) => price?.ranges.find((one) => one.share === share);
    const [e, n] = [range(0.8), range(0.9)];
    if (!price || !e || !n) {
      refused++;
      continue;
    }
    const log = logOf(sale);
    const inside = ({low, high}: {low: number; high: number}) => log >= Math.log(low) && log <= Math.log(high);
    if (inside(e)) eight++;
    if (inside(n)) nine++;
    errors!.push(Math.abs(log - Math.log(price.typical)));
    plainErrors!.push(Math.abs(log - plain.get(sale.sale.kind)!));
    widths!.push(n.high / n.low);
  }
  const priced = errors!.length;
  return {priced, refused, eight: eight / priced, nine: nine / priced, error: median(errors!), plainError: median(plainErrors!), width: median(widths!)};
}
