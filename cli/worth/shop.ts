// ticking shop.
import {shopBooks} from "../../commands/worth/shop-books.ts";
import {printMoney, type Account, type BookOfCurrency} from "../../worth/index.ts";
import {NeedsMending} from "../ending.ts";
import {done, withRack, type RackFlags} from "../rack/with-rack.ts";
import type {Page} from "../words/page.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import * as say from "./problems.ts";
import {isDay} from "./sale-query.ts";
import {sayPart} from "./say.ts";

export async function printShop({from, until, json, ...flags}: RackFlags & {readonly from?: string; readonly until?: string; readonly json?: boolean}): Promise<void> {
  const wrong = [["--from", from], ["--until", until]].filter(([, day]) => day !== undefined && !isDay(day));
  if (wrong.length > 0) throw new NeedsMending(wrong.map(([flag, day]) => say.notDay(flag!, day!)));
  const books = await withRack(flags, false, (rack) => done(shopBooks, {from, until}, rack));
  if (json) return printJson(books);
  const page = newPage();
  if (books.books.length === 0) page.say("Nothing was bought, laid out or sold yet.");
  for (const book of books.books) printBook(page, book);
  page.blank();
  for (const note of books.notes) page.say(note, "quiet");
  printPage(page);
}

function printBook(page: Page, book: BookOfCurrency): void {
  const {currency, spent, laidOut, taken, profit, margin, tied, unknownPaid, byKind, byMaker, byDecade, slow} = book;
  const money = (cents: number) => printMoney(cents, currency);
  page.head(`In ${currency}`);
  page.say(`Bought for ${money(spent)}, laid out ${money(laidOut)}, sold for ${money(taken)}.`);
  page.say(`Earned on what was sold: ${money(profit)}${margin === null ? "" : `, ${sayPart(margin)} of what it brought`}. Tied up in what is not sold: ${money(tied)}.`);
  if (unknownPaid > 0) page.say(`${unknownPaid} of the sold ones have no note of what was paid, and are not in that.`, "quiet");
  for (const [head, accounts] of [["By kind", byKind], ["By maker", byMaker], ["By decade of making", byDecade]] as const) {
    if (accounts.length === 0) continue;
    page.head(head);
    const room = Math.max(...accounts.map(({name}) => name.length));
    for (const account of accounts) page.item(`${account.name.padEnd(room)}  `, sayAccount(account, money));
  }
  if (slow.length > 0) page.head("Hanging longest");
  for (const {number, kind, days, usual, paid} of slow.slice(0, 10)) page.item(`${number}  `, `${kind} · ${days} days${usual === null ? "" : `, such things usually take ${Math.round(usual)}`}${paid === null ? "" : ` · paid ${money(paid)}`}`);
}

const sayAccount = ({bought, sold, taken, profit, margin, days}: Account, money: (cents: number) => string) =>
  `${bought} bought, ${sold} sold${sold === 0 ? "" : ` for ${money(taken)}, ${money(profit)} earned${margin === null ? "" : ` (${sayPart(margin)})`}${days === null ? "" : `, ${Math.round(days)} days`}`}`;
