// ticking price and ticking offer.
import {worthOfGarment} from "../../commands/worth/price-garment.ts";
import {termsInUse} from "../../commands/worth/terms-in-use.ts";
import type {Problem} from "../../engine/index.ts";
import {printMoney, type WorthAnswer} from "../../worth/index.ts";
import {NeedsMending} from "../ending.ts";
import {counted} from "../rack/counted.ts";
import {done, garmentNamed, withRack, type RackFlags} from "../rack/with-rack.ts";
import type {Page} from "../words/page.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {centsOf} from "./money-flag.ts";
import {sayAmount} from "./say.ts";
import {termsGiven} from "./term-flag.ts";

export interface PriceFlags extends RackFlags {
  readonly with?: readonly string[];
  readonly json?: boolean;
}

export async function printPrice(name: string, flags: PriceFlags): Promise<void> {
  const {title, answer} = await asked(name, flags, undefined);
  if (flags.json) return printJson(answer);
  const page = newPage();
  page.say(title, "strong");
  page.blank();
  for (const words of answer.words) page.say(words);
  if (answer.price) printReasons(page, answer);
  printCautions(page, answer);
  printPage(page);
}

export async function printOffer(name: string, flags: PriceFlags & {readonly asked: string}): Promise<void> {
  const {title, answer} = await asked(name, flags, flags.asked);
  if (flags.json) return printJson(answer);
  const page = newPage();
  page.say(title, "strong");
  page.blank();
  if (answer.offer) printOfferOf(page, answer, answer.offer);
  else for (const words of answer.words) page.say(words);
  printCautions(page, answer);
  printPage(page);
}

async function asked(name: string, flags: PriceFlags, amount: string | undefined): Promise<{readonly title: string; readonly answer: WorthAnswer}> {
  const terms = termsGiven(flags.with ?? []);
  return withRack(flags, false, async (rack) => {
    const {id, content: {garment}} = await garmentNamed(name, rack);
    const problems: Problem[] = [];
    const cents = centsOf("--asked", amount, (await termsInUse(rack.store, terms)).currency, problems);
    if (problems.length > 0) throw new NeedsMending(problems);
    const answer = await done(worthOfGarment, {id, asked: cents, terms}, rack);
    return {title: `${garment.garment}${garment.title ? ` · ${garment.title}` : ""}`, answer};
  });
}

function printReasons(page: Page, {currency, price, drivers, used, sales, method, offer}: WorthAnswer): void {
  const money = (cents: number) => printMoney(cents, currency);
  page.head("Ranges");
  for (const {share, low, high} of price!.ranges) page.say(`${Math.round(10 * share)} in 10 between ${money(low)} and ${money(high)}`);
  if (drivers.length > 0) page.head("What drives it");
  for (const {words, factor} of drivers) page.item(`${times(factor)}  `, words);
  if (offer) {
    page.head("Buying and selling");
    page.say(`Pay ${money(offer.most)} at most; list it at ${money(offer.list)}; do not sell below ${money(offer.walkAway)}.`);
  }
  page.head("Sales used", `${counted(sales.kind, "sale")} of its kind, as good as ${Math.round(sales.like)} just like it`);
  for (const one of used.slice(0, 6)) page.item(`${one.soldOn}  `, `${sayAmount(one.price)}, ${money(one.adjusted)} as if it had been this one today · ${one.words}`);
  for (const {why, count} of sales.leftOut) page.say(`${counted(count, "sale")} left out: ${why}.`, "quiet");
  for (const words of method.words) page.say(words, "quiet");
}

function printOfferOf(page: Page, {currency, looks, price}: WorthAnswer, {most, breakEven, list, walkAway, lines, atAsked}: NonNullable<WorthAnswer["offer"]>): void {
  const money = (cents: number) => printMoney(cents, currency);
  if (atAsked) page.say(atAsked.words, atAsked.buy ? "strong" : "odd");
  page.head("How it comes about");
  const room = Math.max(...lines.map(({cents}) => money(cents).length), money(most).length);
  for (const {what, cents} of lines) page.item(`${money(cents).padStart(room)}  `, what);
  page.item(`${money(most).padStart(room)}  `, "to pay at most", "strong");
  page.blank();
  page.say(`It typically brings ${money(price!.typical)}. Bought at ${money(breakEven)} nothing is earned and nothing lost. List it at ${money(list)}; do not sell below ${money(walkAway)}.`);
  if (atAsked) page.say(`At ${money(atAsked.asked)}: ${money(atAsked.profit)} expected; the wanted margin in ${inTen(atAsked.earns)}, a loss in ${inTen(atAsked.loses)}.`);
  if (!looks) return;
  page.head("What looking further is worth");
  page.say(looks.words);
  for (const {name, worth, turns} of looks.looks.filter((look) => look.worth > 0).slice(0, 5)) page.item(`${money(worth)}  `, `${name}; it turns the choice in ${inTen(turns)}`);
}

function printCautions(page: Page, {cautions}: WorthAnswer): void {
  page.head("Keep in mind");
  for (const words of cautions) page.item("- ", words, "quiet");
}

/** 1.2 is "+20 %". */
const times = (factor: number) => `${factor >= 1 ? "+" : "−"}${Math.round(100 * Math.abs(factor - 1))} %`.padStart(6);

const inTen = (share: number) => (share >= 0.995 ? "all cases" : share < 0.005 ? "no case" : `${Math.round(100 * share)} of 100 cases`);
