// Guesses what a column of somebody's own table of sales holds, from its name; the owner has the last word.
import type {SaleColumn} from "../../../commands/worth/table/sale-column.ts";
import {guessFrom} from "../../rack/guess-column.ts";
import type {Column} from "../../rack/column-table.tsx";

/** What each entry of a sale is called on screen. */
export const saleEntryNames = {
  soldOn: "day it was sold", price: "price", currency: "currency of the amounts", fees: "fees", kind: "kind of garment", maker: "maker", lot: "lot", madeFrom: "made from", madeUntil: "made until", size: "size", grade: "grade", channel: "where it was sold", note: "note",
} as const satisfies Readonly<Record<SaleColumn, string>>;

const words: readonly (readonly [SaleColumn, readonly string[]])[] = [
  ["soldOn", ["sold", "sold on", "date", "day", "date sold", "sale date", "when"]],
  ["price", ["price", "sold for", "amount", "paid", "brought", "hammer price", "total"]],
  ["currency", ["currency", "cur", "money"]],
  ["fees", ["fees", "fee", "commission", "charges"]],
  ["kind", ["kind", "type", "garment", "category", "what", "item"]],
  ["maker", ["maker", "brand", "make", "manufacturer"]],
  ["lot", ["lot", "lot number", "model", "style"]],
  ["madeFrom", ["made from", "year from", "from", "year", "made", "earliest"]],
  ["madeUntil", ["made until", "year to", "year until", "until", "to", "latest"]],
  ["size", ["size", "tag size", "sizes"]],
  ["grade", ["grade", "condition", "state", "quality"]],
  ["channel", ["channel", "where", "sold through", "venue", "market", "place", "source"]],
  ["note", ["note", "notes", "remark", "remarks", "comment", "comments", "title", "description"]],
];

export const guessSaleColumns = (columns: readonly Column[]): Record<string, string> => guessFrom(words, columns);
