// ticking rack list.
import {printMoney} from "../../commands/rack/table/money-cell.ts";
import type {RackRow} from "../../store/model.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {counted} from "./counted.ts";
import {queryOf, type QueryFlags} from "./query.ts";
import {withStore, type RackFlags} from "./with-rack.ts";

export async function listRack(words: readonly string[], flags: RackFlags & QueryFlags & {readonly json?: boolean}): Promise<void> {
  const query = queryOf(words, flags);
  const {total, rows, ...rest} = await withStore(flags, false, ({store}) => store.search(query));
  if (flags.json) return printJson({total, rows, ...rest});
  const page = newPage();
  const room = Math.min(page.room >> 2, Math.max(0, ...rows.map(({number}) => number.length))) + 2;
  for (const row of rows) {
    page.item(row.number.padEnd(room), sayDated(row));
    const beside = [row.title, row.place, row.standing, row.asked ? printMoney(row.asked) : "", ...row.tags.map((tag) => `#${tag}`)].filter((text) => text !== "");
    page.item(" ".repeat(room), beside.join(" · "), "quiet");
  }
  page.blank();
  page.say(rows.length === total ? `${counted(total, "garment")}.` : `${rows.length} of ${total} garments; --limit shows more, words and flags choose fewer.`);
  printPage(page);
}

export function sayDated({dating}: Pick<RackRow, "dating">): string {
  return dating ? `${dating.words} (${dating.sureness})${dating.odd > 0 ? `, ${counted(dating.odd, "odd mark")}` : ""}` : "not dated";
}
