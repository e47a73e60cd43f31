// Days, times of making and amounts as people write them in tables of sales, and what their columns are called.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {readDay, readMade} from "../../../commands/worth/table/day-cell.ts";
import {readPrice} from "../../../commands/worth/table/price-cell.ts";
import {saleColumnOf} from "../../../commands/worth/table/sale-column.ts";
import {printMoney} from "../../../commands/rack/table/money-cell.ts";
import {currencies} from "../../../worth/index.ts";

// Source: ISO 8601; the forms with points and strokes are common practice, no source.
test("days are read as they are written, and a day that can be two is not guessed", () => {
  const cases: [string, "day first" | "month first" | null, string | null][] = [
    ["2026-03-14", null, "2026-03-14"], ["2026-3-4", null, "2026-03-04"], ["2026-03-14T10:00:00Z", null, "2026-03-14"], ["2026-03-14 10:00", null, "2026-03-14"],
    ["14.3.2026", null, "2026-03-14"], ["14. 3. 2026", null, "2026-03-14"], ["3/14/2026", null, "2026-03-14"], ["14/3/2026", null, "2026-03-14"], ["5/5/2026", null, "2026-05-05"],
    ["3/4/2026", null, "either"], ["3/4/2026", "day first", "2026-04-03"], ["3/4/2026", "month first", "2026-03-04"], ["14/3/2026", "month first", null],
    ["2026-02-29", null, null], ["2024-02-29", null, "2024-02-29"], ["31.4.2026", null, null], ["2026-13-01", null, null], ["last spring", null, null], ["", null, null], ["14.3.26", null, null],
  ];
  for (const [text, order, wanted] of cases) expect([text, order, readDay(text, order)]).toEqual([text, order, wanted]);
});

test("every day of the calendar is read back from each unmistakable form", () => {
  fc.assert(fc.property(fc.date({min: new Date("1900-01-01T00:00:00Z"), max: new Date("2100-01-01T00:00:00Z"), noInvalidDate: true}), (date) => {
    const [year, month, day] = date.toISOString().slice(0, 10).split("-") as [string, string, string];
    const wanted = `${year}-${month}-${day}`;
    expect([readDay(wanted, null), readDay(`${day}.${month}.${year}`, null), readDay(`${Number(day)}/${Number(month)}/${year}`, "day first"), readDay(`${Number(month)}/${Number(day)}/${year}`, "month first")]).toEqual([wanted, wanted, wanted, wanted]);
  }));
});

test("times of making are read from years, decades, months and spans", () => {
  const cases: [string, [string, string] | null][] = [
    ["1968", ["1968-01", "1968-12"]], ["c. 1968", ["1968-01", "1968-12"]], ["1960s", ["1960-01", "1969-12"]], ["1960's", ["1960-01", "1969-12"]], ["1968-03", ["1968-03", "1968-03"]],
    ["1966-1969", ["1966-01", "1969-12"]], ["1966–1969", ["1966-01", "1969-12"]], ["1966 to 1969", ["1966-01", "1969-12"]], ["1966-05/1969-02", ["1966-05", "1969-02"]],
    ["1969-1966", null], ["1968-13", null], ["long ago", null], ["", null], ["68", null], ["1965s", null],
  ];
  for (const [text, wanted] of cases) expect([text, readMade(text)]).toEqual([text, wanted && {from: wanted[0], until: wanted[1]}]);
});

test("amounts are read with their currency before, behind or said elsewhere", () => {
  const cases: [string, string | null, number | string | null][] = [
    ["120.00 EUR", null, "12000 EUR"], ["EUR 120", null, "12000 EUR"], ["120 eur", null, "12000 EUR"], ["€120", null, "12000 EUR"], ["120 €", null, "12000 EUR"], ["£1,250.50", null, "125050 GBP"], ["1.250,50 EUR", null, "125050 EUR"],
    ["$120", "USD", "12000 USD"], ["$120", "CAD", "12000 CAD"], ["120", "JPY", "120 JPY"], ["1,250", "USD", "125000 USD"], ["120 CHF", "USD", "12000 CHF"],
    ["$120", null, "no currency"], ["120", null, "no currency"], ["120 XQX", null, null], ["EUR 120 USD", null, null], ["a lot", "USD", null], ["", "USD", null], ["1.2.3", "USD", null], ["12.345 USD", null, null], ["1e5", "USD", null],
  ];
  for (const [text, usual, wanted] of cases) {
    const read = readPrice(text, usual);
    expect([text, usual, read === null || typeof read === "string" ? read : `${read.cents} ${read.currency}`]).toEqual([text, usual, wanted]);
  }
});

test("every amount of every currency that an export prints is read back", () => {
  fc.assert(fc.property(fc.integer({min: 0, max: 1e11}), fc.constantFrom(...currencies), (cents, currency) => {
    expect(readPrice(printMoney({cents, currency}), null)).toEqual({cents, currency});
  }));
});

test("columns speak for themselves whatever their case and dashes", () => {
  for (const [name, wanted] of [["soldOn", "soldOn"], ["Sold on", "soldOn"], ["SOLD_ON", "soldOn"], ["made-from", "madeFrom"], ["Currency", "currency"], ["", ""], ["weather", null], ["constructor", null]] as const) expect([name, saleColumnOf(name)]).toEqual([name, wanted]);
});
