// ticking sales list.
import type {SaleRecord} from "../../worth/model.ts";
import {counted} from "../rack/counted.ts";
import {withStore, type RackFlags} from "../rack/with-rack.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {sayAmount, sayMade} from "./say.ts";
import {saleQueryOf, type SaleFlags} from "./sale-query.ts";

export async function listSales(words: readonly string[], flags: RackFlags & SaleFlags & {readonly json?: boolean}): Promise<void> {
  const query = saleQueryOf(words, flags);
  const found = await withStore(flags, false, ({store}) => store.findSales(query));
  if (flags.json) return printJson(found);
  const {total, rows} = found;
  const page = newPage();
  for (const row of rows) {
    page.item(`${row.sale.soldOn}  `, `${sayAmount(row.sale.price)} · ${saidOf(row)}`);
    page.item(" ".repeat(12), [row.sale.channel, row.sale.note, row.garment === null ? row.id : "on the rack"].filter((text) => text !== "").join(" · "), "quiet");
  }
  page.blank();
  page.say(rows.length === total ? `${counted(total, "sale")}.` : `${rows.length} of ${total} sales; --limit shows more, words and flags choose fewer.`);
  printPage(page);
}

const saidOf = ({sale}: SaleRecord) => [sale.kind, sale.maker ?? "", sale.lot ?? "", sayMade(sale), sale.size, sale.grade ?? ""].filter((text) => text !== "").join(" · ");
