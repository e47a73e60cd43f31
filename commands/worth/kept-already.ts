// Finds sales that are kept already, so that none counts twice in a price.
import type {Problem} from "../../engine/index.ts";
import type {Store} from "../../store/store.ts";
import type {Sale, SaleRecord} from "../../worth/model.ts";
import {printMoney} from "../rack/table/money-cell.ts";
import * as say from "./problems.ts";
import {sameSale} from "./same-sale.ts";

/** Looks sales over against all that are kept. */
export interface Keeper {
  /** Null when it is not kept yet. @param except  a sale that is being changed */
  problemOf(sale: Sale, at: string, except?: string): Problem | null;
}

/** @param days  first and last day that the sales looked over were sold on */
export async function keeperOf(store: Pick<Store, "findSales" | "get">, days: {readonly from: string; readonly until: string}): Promise<Keeper> {
  const exact = new Map<string, string>();
  const onRack = new Map<string, string>();
  for await (const {id, garment, sale} of within(store, days)) {
    if (garment === null) {
      exact.set(wholeSale(sale), id);
      continue;
    }
    const number = (await store.get(garment))?.content.garment.garment ?? garment;
    onRack.set(sameSale(sale), number);
    onRack.set(wholeSale(sale), number);
  }
  return {
    problemOf(sale, at, except) {
      const kept = exact.get(wholeSale(sale));
      if (kept !== undefined && kept !== except) return say.keptAlready(at, `${sale.kind}, ${sale.soldOn}, ${printMoney(sale.price)}`);
      const number = onRack.get(sale.note === "" ? sameSale(sale) : wholeSale(sale));
      return number === undefined ? null : say.onTheRack(at, number);
    },
  };
}

/** Everything about a sale, in one order. */
export const wholeSale = ({soldOn, price, fees, kind, maker, lot, madeFrom, madeUntil, size, grade, channel, note}: Sale) =>
  JSON.stringify([soldOn, price.cents, price.currency, fees?.cents, fees?.currency, kind, maker, lot, madeFrom, madeUntil, size, grade, channel, note]);

const perPage = 500;

async function* within(store: Pick<Store, "findSales">, {from, until}: {readonly from: string; readonly until: string}): AsyncGenerator<SaleRecord> {
  for (let offset = 0; ; offset += perPage) {
    const {rows} = await store.findSales({text: "", kind: null, maker: null, grade: null, channel: null, own: null, removed: false, from, until, sort: "sold", descending: false, offset, limit: perPage});
    yield* rows;
    if (rows.length < perPage) return;
  }
}
