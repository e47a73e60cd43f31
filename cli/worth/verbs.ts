// ticking price, offer, lot, sold, shop and terms: what each takes; the work is loaded when one of them is called.
import {Option, type Command} from "commander";
import {dataHelp} from "../data-folder.ts";
import {examples} from "../help.ts";
import {collected, verb} from "../shared.ts";

const garmentHelp = "its number, or its id";
const asJson = ["--json", "answer as JSON"] as const;
const part = (name: string, summary: string) => verb(name, summary).addOption(new Option("--data <folder>", dataHelp));
const changing = (name: string, summary: string) => part(name, summary).option("--who <name>", "who makes the change, for the history; owner when left out");
const withTerms = (command: Command) => command.option("--with <term=value>", "other terms for this question, like margin=0.5 (repeatable)", collected);

export function priceVerb(): Command {
  return withTerms(part("price", "say what a garment may bring, from sales of such things"))
    .argument("<garment>", garmentHelp)
    .option(...asJson)
    .addHelpText("after", examples("ticking price 0147", "ticking price 0147 --with currency=EUR --json"))
    .action(async (...given: Parameters<typeof import("./price.ts").printPrice>) => (await import("./price.ts")).printPrice(...given));
}

export function offerVerb(): Command {
  return withTerms(part("offer", "say what to pay for a garment at most, and what looking further is worth"))
    .argument("<garment>", garmentHelp)
    .requiredOption("--asked <amount>", "what is asked of you, in the currency of the terms")
    .option(...asJson)
    .addHelpText("after", examples("ticking offer 0147 --asked 80", "ticking offer 0147 --asked 80 --with margin=0.5"))
    .action(async (...given: Parameters<typeof import("./price.ts").printOffer>) => (await import("./price.ts")).printOffer(...given));
}

export function lotVerb(): Command {
  return withTerms(part("lot", "say what a rail or a bag may bring, garments that nobody looked at included"))
    .argument("<garment...>", "those that were examined: numbers, or ids")
    .option("--unexamined <count>", "garments in the lot that nobody looked at; 0 when left out")
    .option("--sampled <garment>", "one of the examined ones that was drawn blindly and stands for the rest; all of them when left out (repeatable)", collected)
    .option("--asked <amount>", "what is asked for the whole lot")
    .option(...asJson)
    .addHelpText("after", examples("ticking lot 0147 0149 0152 --unexamined 20 --asked 900"))
    .action(async (...given: Parameters<typeof import("./lot.ts").printLot>) => (await import("./lot.ts")).printLot(...given));
}

export function soldVerb(): Command {
  return changing("sold", "mark a garment as sold; its sale counts in prices at once")
    .argument("<garment>", garmentHelp)
    .requiredOption("--price <amount>", "what the buyer paid, postage apart; in the currency of the terms when it names none")
    .option("--on <day>", "the day of the sale; today when left out")
    .option("--fees <amount>", "what the channel kept")
    .option("--postage <amount>", "postage paid by the shop")
    .option("--channel <words>", "where it was sold")
    .addHelpText("after", examples('ticking sold 0147 --price 220 --channel "market stall"'))
    .action(async (...given: Parameters<typeof import("./sold.ts").markSold>) => (await import("./sold.ts")).markSold(...given));
}

export function shopVerb(): Command {
  return part("shop", "show the books of the shop: bought, laid out, sold, and what hangs too long")
    .option("--from <day>", "first day counted")
    .option("--until <day>", "last day counted")
    .option(...asJson)
    .addHelpText("after", examples("ticking shop", "ticking shop --from 2026-01-01 --until 2026-12-31"))
    .action(async (...given: Parameters<typeof import("./shop.ts").printShop>) => (await import("./shop.ts")).printShop(...given));
}

export function termsVerb(): Command {
  return changing("terms", "show or set what the shop wants and pays: margin, fees, currency ...")
    .option("--set <term=value>", "set one of the terms (repeatable)", collected)
    .option(...asJson)
    .addHelpText("after", examples("ticking terms", "ticking terms --set currency=EUR --set margin=0.45"))
    .action(async (...given: Parameters<typeof import("./terms.ts").termsOfShop>) => (await import("./terms.ts")).termsOfShop(...given));
}
