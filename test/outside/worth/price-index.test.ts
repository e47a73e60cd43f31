// The price index. Source: US Bureau of Labor Statistics, CPI-U all items, 1982-84 = 100; yearly averages as published, months as kept in datasets/cpi-us.
import {expect, test} from "vitest";
import {parseMonth} from "../../../engine/index.ts";
import {cpiUs} from "../../../worth/index/cpi-us.ts";
import {indexAt, inMoneyOf} from "../../../worth/index/price-index.ts";
import {close} from "../../helper/close.ts";
import {readData, type Sourced} from "../../helper/data.ts";

interface Index extends Sourced {
  readonly yearly: Readonly<Record<string, number>>;
  readonly monthly: {readonly jan2023: number; readonly jun2022: number; readonly aug2024: number};
  readonly expected: Readonly<Record<string, number>>;
}

const {yearly, monthly, expected} = readData<Index>("price-index");
const at = (text: string) => indexAt(cpiUs, parseMonth(text)!);

const averageOf = (year: number) => cpiUs.years[year]!.reduce<number>((sum, value) => sum + value!, 0) / 12;

test("money of one year in another is the published ratio", () => {
  for (const [name, amount, then, now] of [["usd100_1980_to_2023", 100, 1980, 2023], ["usd9_95_1955_to_2023", 9.95, 1955, 2023], ["usd19_99_1995_to_2022", 19.99, 1995, 2022], ["usd100_1967_to_2000", 100, 1967, 2000], ["usd100_2023_to_1980", 100, 2023, 1980]] as const) {
    close(inMoneyOf(amount, yearly[then]!, yearly[now]!), expected[name]!, {rel: 1e-12});
  }
  close(inMoneyOf(100, at("2022-06"), at("2024-08")), expected["jun2022_to_aug2024_100"]!, {rel: 1e-12});
});

test("the months are the published ones, and every published yearly average is that of its months", () => {
  expect([at("2023-01"), at("2022-06"), at("2024-08")]).toEqual([monthly.jan2023, monthly.jun2022, monthly.aug2024]);
  // Months of before 2007 are rounded to a tenth: the published averages were made of unrounded ones.
  for (const [year, average] of Object.entries(yearly)) close(averageOf(Number(year)), average, {abs: 0.1, because: "published to a tenth from unrounded months"});
});

test("a month that was not published lies between its neighbours; beyond the ends the nearest known month counts", () => {
  expect(cpiUs.years[2025]![9]).toBeNull();
  close(at("2025-10"), (at("2025-09") + at("2025-11")) / 2, {rel: 1e-12});
  expect(at("1890-05")).toBe(at("1913-01"));
  expect(at("2090-05")).toBe(at("2026-05"));
});
