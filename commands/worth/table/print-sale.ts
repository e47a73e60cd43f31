// Sales as a table that reads back to the same sales; no cell can run as a formula.
import type {Sale} from "../../../worth/model.ts";
import {guarded, printCells} from "../../batch/cells.ts";
import {printMoney} from "../../rack/table/money-cell.ts";
import {saleColumns} from "./sale-column.ts";

const columns = saleColumns.filter((column) => column !== "currency");

export const saleHeader = printCells([...columns], ",");

/** Guarded as the OWASP page on CSV injection asks, like the table of garments. */
export function printSale(sale: Sale): string {
  const text = (column: (typeof columns)[number]) => {
    const value = sale[column];
    return value === null ? "" : typeof value === "string" ? value : printMoney(value);
  };
  return printCells(columns.map((column) => guarded(text(column))), ",");
}
