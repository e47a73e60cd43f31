// A sale is read back as it was typed; what cannot stand is told beside its field, all at once.
import fc from "fast-check";
import {expect, test} from "vitest";
import {grades} from "../../../../state/model.ts";
import {saleSchema, type Sale} from "../../../../worth/model.ts";
import {readMonth, typeMonth} from "../../../../web/worth/sale/month-text.ts";
import {blankSale, readSale, typeSale} from "../../../../web/worth/sale/sale-entry.ts";
import {sayMade, sayWhat} from "../../../../web/worth/sale/say-sale.ts";

const makers = new Map([["marrowfield", "Marrowfield Dungaree Company"]]);
const today = "2026-11-25";
const line = fc.string({maxLength: 30}).map((text) => text.trim());
const month = fc.integer({min: 1900 * 12, max: 2020 * 12}).map((months) => `${Math.floor(months / 12)}-${String((months % 12) + 1).padStart(2, "0")}`);
const sale: fc.Arbitrary<Sale> = fc
  .record({price: fc.integer({min: 1, max: 1e9}), fees: fc.option(fc.integer({min: 0, max: 1e9})), currency: fc.constantFrom("USD", "JPY", "KWD"), kind: line.filter((text) => text !== ""), maker: fc.option(fc.constantFrom("marrowfield", "Hollin & Thrale")), lot: fc.option(line.filter((text) => text !== "")), from: fc.option(month), until: fc.option(month), size: line, grade: fc.option(fc.constantFrom(...grades)), channel: line, note: line})
  .map(({price, fees, currency, from, until, ...rest}) => {
    const [madeFrom, madeUntil] = from && until && from > until ? [until, from] : [from, until];
    return {...rest, soldOn: "2026-03-14", price: {cents: price, currency}, fees: fees === null ? null : {cents: Math.min(fees, price), currency}, madeFrom, madeUntil};
  });

test("a sale is read back as it was", () => {
  fc.assert(
    fc.property(sale, (one) => {
      const read = readSale(typeSale(one, makers), makers, today);
      expect(read).toEqual({sale: one, slips: {}});
      expect(() => saleSchema.parse(read.sale)).not.toThrow();
    }),
  );
});

test("every slip is told at once, and nothing is read", () => {
  const entry = {...blankSale("USD", "2027-01-01"), price: "12,3,4", fees: "x", madeFrom: "1970", madeUntil: "1968", currency: "ABC"};
  const {sale: read, slips} = readSale(entry, makers, today);
  expect(read).toBeNull();
  expect(Object.keys(slips).sort()).toEqual(["currency", "fees", "kind", "madeUntil", "price", "soldOn"]);
});

test("fees above the price, a price of nothing, and a garment made after it was sold are told", () => {
  const entry = {...blankSale("USD", today, "jacket"), price: "10"};
  expect(readSale({...entry, fees: "11"}, makers, today).slips).toEqual({fees: expect.any(String)});
  expect(readSale({...entry, price: "0"}, makers, today).slips).toEqual({price: expect.any(String)});
  expect(readSale({...entry, madeFrom: "2030"}, makers, today).slips).toEqual({madeFrom: expect.any(String)});
});

test("a maker is known by the name or the id of its book, in any case; another name stays", () => {
  const named = (maker: string) => readSale({...blankSale("USD", today, "jacket"), price: "10", maker}, makers, today).sale!.maker;
  expect([named("marrowfield dungaree company"), named("Marrowfield"), named(" Hollin & Thrale "), named("")]).toEqual(["marrowfield", "marrowfield", "Hollin & Thrale", null]);
});

test("a year stands for its first month, or for its last; a month may be written either way round", () => {
  expect([readMonth("1968", "from"), readMonth("1968", "until"), readMonth("3/1968", "until"), readMonth("1968-03", "from"), readMonth("", "from")].map(({month: one}) => one)).toEqual(["1968-01", "1968-12", "1968-03", "1968-03", null]);
  expect(["68", "1968-13", "about 1968", "1968-00"].map((text) => readMonth(text, "from").wrong)).toEqual(Array(4).fill(expect.any(String)));
  expect([typeMonth("1968-01", "from"), typeMonth("1968-12", "until"), typeMonth("1968-03", "from"), typeMonth("1968-12", "from")]).toEqual(["1968", "1968", "1968-03", "1968-12"]);
});

test("a sale is said in a line", () => {
  const name = (maker: string) => makers.get(maker) ?? maker;
  expect(sayWhat({kind: "trousers", maker: "marrowfield", lot: "418"}, name)).toBe("Trousers by Marrowfield Dungaree Company, lot 418");
  expect(sayWhat({kind: "tee", maker: null, lot: null}, name)).toBe("Tee");
  expect([["1966-01", "1969-12"], ["1968-01", "1968-12"], ["1968-03", null], [null, "1970-12"], [null, null]].map(([madeFrom, madeUntil]) => sayMade({madeFrom: madeFrom!, madeUntil: madeUntil!}))).toEqual(["1966 to 1969", "1968", "from 1968-03", "until 1970", ""]);
});
