// Sales as columns of numbers, grouped by kind, so that a hundred thousand of them are weighed in a few milliseconds.
import {dayNumber, monthOf, parseMonth, type DayIndex} from "../../engine/index.ts";
import {grades} from "../../state/model.ts";
import {inMoneyOf, indexAt, type PriceIndex} from "../index/price-index.ts";
import type {SaleRecord} from "../model.ts";
import {decay} from "../num/weighted.ts";

/** What of a kept sale the arithmetic needs. */
export type KeptSale = Pick<SaleRecord, "id" | "garment" | "removed" | "sale">;

/** Texts by number; 0 is "unknown". */
export interface Names {
  readonly list: readonly string[];
  find(name: string | null): number;
}

/** Row i of every column is one sale; rows of one kind stand together. */
export interface Columns {
  readonly sales: readonly KeptSale[];
  readonly kinds: Names;
  readonly makers: Names;
  readonly lots: Names;
  readonly sizes: Names;
  readonly channels: Names;
  readonly kind: Int32Array;
  readonly maker: Int32Array;
  readonly lot: Int32Array;
  readonly size: Int32Array;
  readonly channel: Int32Array;
  /** 0 unknown, 1 the best grade ... 6 the worst. */
  readonly grade: Uint8Array;
  /** Months of making, both included; `noMonth` where nothing is known. */
  readonly from: Int32Array;
  readonly until: Int32Array;
  /** Years since the sale. */
  readonly age: Float64Array;
  /** What its age leaves of a sale's weight. */
  readonly fresh: Float64Array;
  /** Logarithm of the price in cents, in money of today where an index is known. */
  readonly log: Float64Array;
  /** First row of each kind, and one past the last. */
  readonly kindRows: readonly {readonly start: number; readonly end: number}[];
}

export const noMonth = -1e9;
/** Years after which a sale counts half. Own choice, docs/decisions/0021-worth.md. */
const halfLife = 4;
/** A missing end of a range of making is taken to lie this many months from the other. Own choice. */
const openRange = 120;

/** Makes columns of sales that can be used, all of one currency, sold by `today`. */
export function columnsOf(sales: readonly KeptSale[], today: DayIndex, index: PriceIndex | null): Columns {
  const kinds = names();
  const kindOf = sales.map(({sale}) => kinds.add(sale.kind));
  const order = Int32Array.from(kindOf, (_, i) => i).sort((a, b) => kindOf[a]! - kindOf[b]! || a - b);
  const [makers, lots, sizes, channels] = [names(), names(), names(), names()];
  const n = sales.length;
  const whole = () => new Int32Array(n);
  const real = () => new Float64Array(n);
  const c = {kind: whole(), maker: whole(), lot: whole(), size: whole(), channel: whole(), grade: new Uint8Array(n), from: whole(), until: whole(), age: real(), fresh: real(), log: real()};
  const then = new Map<number, number>();
  const now = index ? indexAt(index, monthOf(today)) : 1;
  order.forEach((at, i) => {
    const {sale} = sales[at]!;
    const sold = dayOf(sale.soldOn);
    const month = monthOf(sold);
    if (index && !then.has(month)) then.set(month, indexAt(index, month));
    const from = sale.madeFrom === null ? null : parseMonth(sale.madeFrom);
    const until = sale.madeUntil === null ? null : parseMonth(sale.madeUntil);
    c.kind[i] = kindOf[at]!;
    c.maker[i] = makers.add(sale.maker);
    c.lot[i] = lots.add(sale.lot);
    c.size[i] = sizes.add(sale.size);
    c.channel[i] = channels.add(sale.channel);
    c.grade[i] = sale.grade === null ? 0 : grades.indexOf(sale.grade) + 1;
    c.from[i] = from ?? (until === null ? noMonth : until - openRange);
    c.until[i] = until ?? (from === null ? noMonth : from + openRange);
    c.age[i] = (today - sold) / 365.25;
    c.fresh[i] = decay(c.age[i]!, halfLife);
    c.log[i] = Math.log(inMoneyOf(sale.price.cents, then.get(month) ?? 1, now));
  });
  const kindRows = kinds.list.map((_, kind) => ({start: c.kind.indexOf(kind), end: c.kind.lastIndexOf(kind) + 1}));
  return {...c, sales: Array.from(order, (at) => sales[at]!), kinds, makers, lots, sizes, channels, kindRows};
}

/** The day number of 2026-11-25. */
export function dayOf(text: string): DayIndex {
  return dayNumber(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10)));
}

/** Names are the same whatever their case and blanks around. */
const plain = (name: string | null) => (name ?? "").trim().toLowerCase();

function names(): Names & {add(name: string | null): number} {
  const list = [""];
  const known = new Map([["", 0]]);
  return {
    list,
    find: (name) => known.get(plain(name)) ?? -1,
    add(name) {
      const key = plain(name);
      let at = known.get(key);
      if (at === undefined) {
        known.set(key, (at = list.length));
        list.push(key);
      }
      return at;
    },
  };
}
