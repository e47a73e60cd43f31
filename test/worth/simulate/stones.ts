// A public table of prices, read as sales: real prices that nobody made up, to see whether ranges hold and corrections help.
import {printMonth, monthIndex} from "../../../engine/index.ts";
import {grades} from "../../../state/model.ts";
import {saleSchema} from "../../../worth/model.ts";
import type {KeptSale} from "../../../worth/price/columns.ts";
import {readData, type Sourced} from "../../helper/data.ts";
import {seeded} from "../../simulate/random.ts";

interface Stones extends Sourced {
  readonly rows: readonly (readonly [carats: number, cut: number, colour: number, clarity: number, dollars: number])[];
}

export const stonesDay = "2026-06-01";

/** Stones in random order. Weight stands where a garment has its time of making (a hundredth of a carat is four months), clarity for the maker, cut for the grade, colour for the size. */
export function stones(seed: number): KeptSale[] {
  const {rows} = readData<Stones>("stones");
  return seeded(seed).shuffled(rows).map(([carats, cut, colour, clarity, dollars], i) => {
    const month = printMonth(monthIndex(4 * carats));
    return {
      id: `stone${i}`, garment: null, removed: false,
      sale: saleSchema.parse({soldOn: stonesDay, price: {cents: dollars * 100, currency: "USD"}, kind: "stone", maker: `clarity ${clarity}`, madeFrom: month, madeUntil: month, grade: grades[cut], size: `colour ${colour + 1}`}),
    };
  });
}
