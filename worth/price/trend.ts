// How such things have sold over the last years: the lines below which a tenth, half and nine tenths of the sales lie.
import type {Trend} from "../answer.ts";
import {quantileRegression} from "../num/quantile-regression.ts";
import type {Columns} from "./columns.ts";
import {sumOver, type Effects} from "./effects.ts";
import {heaviestPlaces, type Prediction} from "./predict.ts";
import type {Query} from "./query.ts";

const mostSales = 120;
const leastSales = 12;
const leastYears = 0.5;
const lines = [0.1, 0.5, 0.9] as const;

/** Over the sales that count most, each as if it had been this garment but left at its day; null when they are few or of one season. */
export function trendOf(columns: Columns, effects: Effects, left: Float64Array, query: Query, {rows, shares}: Prediction): Trend | null {
  const used = heaviestPlaces(shares, mostSales);
  const own = effects.trust * sumOver(effects, query);
  const {start} = columns.kindRows[query.kind]!;
  const ages = Float64Array.from(used, (k) => columns.age[rows[k]!]!);
  const [newest, oldest] = [Math.min(...ages), Math.max(...ages)];
  if (used.length < leastSales || oldest - newest < leastYears) return null;
  const logs = Float64Array.from(used, (k) => left[rows[k]! - start]! + own - effects.trust * effects.drift * columns.age[rows[k]!]!);
  const weights = Float64Array.from(used, (k) => shares[k]!);
  const fits = lines.map((share) => ({share, line: quantileRegression([new Float64Array(used.length).fill(1), ages], logs, share, weights)}));
  const at = (line: Float64Array, age: number) => Math.round(Math.exp(line[0]! + line[1]! * age));
  const soldOn = (age: number) => columns.sales[rows[used[ages.indexOf(age)]!]!]!.sale.soldOn;
  return {
    since: soldOn(oldest), until: soldOn(newest), yearly: Math.exp(-(fits[1]!.line?.[1] ?? 0)),
    lines: fits.flatMap(({share, line}) => (line ? [{share, since: at(line, oldest), until: at(line, newest)}] : [])),
  };
}
