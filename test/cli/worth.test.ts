// ticking price, offer, lot, sold, sales, shop and terms, run as a person runs them.
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {beforeAll, expect, test} from "vitest";
import {demoGarments, demoShop} from "../../rulebooks/load.ts";
import {hangDemo} from "../../server/demo.ts";
import {openStore} from "../../store/open.ts";
import {mkdtempSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {folder, ticking} from "./run-ticking.ts";

const flat = (text: string) => text.replace(/\s+/g, " ");
const home = mkdtempSync(join(tmpdir(), "ticking-worth-"));
let data: string;
beforeAll(async () => {
  data = join(home, "shop");
  const store = await openStore(data);
  await hangDemo(store, demoGarments(), "2026-11-05T00:00:00.000Z", demoShop());
  await store.close();
  return () => rmSync(home, {recursive: true, force: true});
});
const on = (...args: readonly string[]) => ticking([...args, "--data", data]);

test("a price is told with its ranges, its times, what drives it, the sales it rests on, and what to keep in mind", async () => {
  const {code, out, err} = await on("price", "0147");
  expect([code, err]).toEqual([0, ""]);
  expect(flat(out)).toMatch(/0147 · Straight-leg trousers.*As it stands: USD \d+, and eight in ten between USD \d+ and USD \d+\..*If it is from 1968/);
  for (const words of ["Ranges", "What drives it", "Sales used", "Keep in mind", "are invented for the demo"]) expect(flat(out)).toContain(words);
});

test("an offer says at most how much, how it comes about, and what a look is worth; JSON has the same figures", async () => {
  const [words, json] = await Promise.all([on("offer", "0147", "--asked", "120"), on("offer", "0147", "--asked", "USD 120", "--json")]);
  expect([words.code, json.code]).toEqual([0, 0]);
  const {offer, looks} = JSON.parse(json.out) as {offer: {most: number; atAsked: {asked: number}}; looks: {knowing: number}};
  expect(offer.atAsked.asked).toBe(12_000);
  const below = await on("offer", "0147", "--asked", "-5");
  expect([below.code === 0, below.err.includes("“-5” is below nothing")]).toEqual([false, true]);
  expect(looks.knowing).toBeGreaterThan(0);
  expect(flat(words.out)).toContain("to pay at most");
  expect(flat(words.out)).toContain(`USD ${Math.floor(offer.most / 100)}`);
  expect(flat(words.out)).toContain("What looking further is worth");
});

test("a lot is priced with what nobody looked at; twice the same answer", async () => {
  const [one, two] = await Promise.all([1, 2].map(() => on("lot", "0147", "0149", "0152", "--unexamined", "20", "--sampled", "0149", "--asked", "900", "--json")));
  expect([one!.code, one!.err]).toEqual([0, ""]);
  expect(JSON.parse(one!.out)).toMatchObject({unexamined: 20, garments: [{}, {}, {}], total: {typical: expect.any(Number) as number}});
  expect(two!.out).toBe(one!.out);
  expect((await on("lot", "0147", "--sampled", "0149")).err).toContain("is not among its examined ones");
});

test("a garment is sold, is a sale at once, and is in the books", async () => {
  const before = JSON.parse((await on("sales", "list", "--own", "--json")).out) as {total: number};
  const sold = await on("sold", "0152", "--price", "220", "--on", "2026-11-04", "--channel", "market stall");
  expect([sold.code, sold.out]).toEqual([0, "0152 is sold for USD 220 on 2026-11-04; it counts in prices from now on.\n"]);
  const after = JSON.parse((await on("sales", "list", "--own", "--json")).out) as {total: number; rows: {sale: {soldOn: string; price: object}}[]};
  expect([after.total, after.rows[0]!.sale]).toMatchObject([before.total + 1, {soldOn: "2026-11-04", price: {cents: 22_000, currency: "USD"}}]);
  expect((await on("sold", "0152", "--price", "230")).err).toContain("was sold on 2026-11-04 already");
  const shop = await on("shop");
  for (const words of ["Earned on what was sold", "By kind", "By maker", "By decade of making", "Hanging longest"]) expect(flat(shop.out)).toContain(words);
  expect((await on("shop", "--from", "spring")).err).toContain("“spring” is no day");
});

test("sales are written down, listed, removed and put back", async () => {
  const shop = join(folder(), "shop");
  const here = (...args: readonly string[]) => ticking(["sales", ...args, "--data", shop]);
  const added = await here("add", "--on", "2026-03-14", "--price", "180.00 EUR", "--kind", "Trousers", "--maker", "marrowfield", "--made", "1966-1969", "--grade", "good", "--note", "with belt");
  expect([added.code, added.err]).toEqual([0, ""]);
  const id = /as (\w+)\./.exec(added.out)![1]!;
  expect(flat((await here("list", "belt")).out)).toContain(`2026-03-14 EUR 180 · trousers · marrowfield · made 1966 to 1969 · good with belt · ${id} 1 sale.`);
  expect((await here("remove", id)).out).toContain("1 sale out of the list");
  expect((await here("list")).out).toContain("0 sales.");
  expect((await here("put-back", id)).out).toContain("1 sale in the list again");
  const wrong = await here("add", "--on", "tomorrow", "--price", "much", "--kind", "coat", "--made", "long ago", "--grade", "nice");
  expect(wrong.code).toBe(2);
  for (const words of ["“tomorrow” is no day", "“much” is no amount", "“long ago” is no time of making", "“nice” is none of the words"]) expect(flat(wrong.err)).toContain(words);
  expect((await here("remove", "nothing0here0")).err).toContain("no sale with the id");
});

test("a table of sales goes in whole or not at all, and comes out again", async () => {
  const shop = join(folder(), "shop");
  const here = (...args: readonly string[]) => ticking(["sales", ...args, "--data", shop]);
  const file = join(folder(), "sold.csv");
  writeFileSync(file, "when,price,kind\n3/4/2026,120,coat\n4/4/2026,130,coat\n");
  const takes = ["--take", "when=soldOn", "--currency", "USD"];
  const unclear = await here("import", file, ...takes);
  expect([unclear.code, flat(unclear.err)]).toEqual([2, expect.stringContaining("“3/4/2026” can be read two ways")]);
  const tried = await here("import", file, ...takes, "--days", "day first", "--try");
  expect([tried.code, tried.out]).toEqual([0, expect.stringContaining("2 sales could be taken over. Nothing was saved.")]);
  expect((await here("import", file, ...takes, "--days", "day first")).out).toBe("2 sales taken over.\n");
  expect((await here("export")).out.split("\r\n").slice(1, 3).map((line) => line.split(",").slice(0, 2))).toEqual([["2026-04-04", "130.00 USD"], ["2026-04-03", "120.00 USD"]]);
});

test("terms are shown, set, and asked for otherwise for one question", async () => {
  const shop = join(folder(), "shop");
  const here = (...args: readonly string[]) => ticking(["terms", "--data", shop, ...args]);
  expect(flat((await here()).out)).toContain("margin 40 %");
  expect(flat((await here("--set", "margin=0.5", "--set", "currency=eur")).out)).toContain("currency EUR · in which the shop reckons margin 50 %");
  expect(JSON.parse((await here("--json")).out)).toMatchObject({margin: 0.5, currency: "EUR"});
  const wrong = await here("--set", "luck=1", "--set", "margin=2");
  expect([wrong.code, flat(wrong.err)]).toEqual([2, expect.stringContaining("“luck=1” names none of the terms")]);
  expect((await here("--set", "margin=2")).code).toBe(2);
  const most = async (...more: readonly string[]) => (JSON.parse((await on("offer", "0147", "--asked", "100", "--json", ...more)).out) as {offer: {most: number}}).offer.most;
  expect(await most("--with", "margin=0.6")).toBeLessThan(await most());
  expect((await on("offer", "0147", "--asked", "100 EUR")).err).toContain("is not in USD");
});
