// The books of the shop: what was bought, laid out and sold, and what hangs too long.
import {z} from "zod";
import type {GarmentRecord} from "../../store/model.ts";
import {bookTheShop, shopBooksSchema, type ShopGarment} from "../../worth/index.ts";
import {allRecords} from "../rack/all-records.ts";
import {rackCommand, unfit} from "../rack/rack-command.ts";
import * as say from "./problems.ts";

const day = z.iso.date().nullable().default(null);

export const shopBooks = rackCommand({
  name: "shop.books",
  summary: "show the books of the shop: bought, laid out, sold, margins and slow movers",
  route: {method: "get", path: "/api/shop"},
  input: z.strictObject({from: day.describe("first day counted"), until: day.describe("last day counted")}),
  output: shopBooksSchema,
  async run({from, until}, {store, now}) {
    if (from !== null && until !== null && from > until) return unfit([say.spanReversed(from, until)]);
    const garments: ShopGarment[] = [];
    for await (const record of allRecords(store)) if (!record.removed) garments.push(shopGarment(record));
    return {answer: bookTheShop(garments, {today: now.slice(0, 10), from, until})};
  },
});

/** A garment that is not sold after all has no sale, whatever is still noted of one. */
function shopGarment({id, content: {garment, standing, dating, paid, asked, money}}: GarmentRecord): ShopGarment {
  return {
    id,
    number: garment.garment,
    kind: garment.type ?? "",
    maker: dating ? dating.maker : typeof garment.maker === "string" ? garment.maker : null,
    // Where nothing can be told the likeliest month is an accident.
    year: dating && dating.kind !== "cannot tell" ? Number(dating.best.slice(0, 4)) : null,
    paid, asked,
    money: money && standing !== "sold" ? {...money, sold: null} : money,
    offered: standing === "for sale" || standing === "to examine",
  };
}
