// What the columns of a table of sales are: the entries of a sale, and the currency of its amounts.
import {saleSchema} from "../../../worth/model.ts";

const entries = Object.keys(saleSchema.shape) as readonly (keyof typeof saleSchema.shape)[];
/** In the order of a sale; the currency stands beside the price. */
export const saleColumns = [...entries, "currency"] as const;
export type SaleColumn = (typeof saleColumns)[number];

/** Entries without which a sale tells nothing. */
export const neededColumns: readonly (readonly [SaleColumn, string])[] = [["soldOn", "the day it was sold"], ["price", "the price"], ["kind", "the kind of garment"]];

/** The entry that a column's name says; null when it says none. Case, blanks and dashes do not count. */
export function saleColumnOf(name: string): SaleColumn | "" | null {
  const bare = (text: string) => text.toLowerCase().replace(/[\s_-]+/g, "");
  return bare(name) === "" ? "" : (saleColumns.find((column) => bare(column) === bare(name)) ?? null);
}
