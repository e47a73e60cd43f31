// How fast a garment is priced from a hundred thousand sales, how often its ranges hold, and how near it is beside a plain median.
import {makeComparables, priceGarment, priceLot, type Subject} from "../worth/index.ts";
import {termsSchema} from "../worth/model.ts";
import {seeded} from "../test/simulate/random.ts";
import {marketDay, marketOf, subjectOf} from "../test/worth/simulate/market.ts";
import {stones, stonesDay} from "../test/worth/simulate/stones.ts";
import {tryOut, type Trial} from "../test/worth/simulate/trial.ts";
import type {Line} from "./line.ts";
import {quantile} from "./measure.ts";

const total = 100_000;
const terms = termsSchema.parse({currency: "EUR"});

/** Two times and two makers open, and four looks weighed: more than most garments ask for. */
const looks = [0, 1, 2, 3].map((i) => ({
  mark: `mark-${i}`, name: `mark ${i}`, effort: 1, opensSeam: false,
  outcomes: [{probability: 0.7, years: {first: 1964, shares: [1, 2, 5, 8, 3]}}, {probability: 0.3, years: {first: 1974, shares: [1, 2, 3, 2, 1]}}],
}));

export function measureWorth(rounds: number): Line[] {
  const sales = marketOf({sales: total + 40, seed: 5});
  const known = sales.slice(0, total);
  const [ready, comparables] = timed(() => makeComparables(known, {currency: "EUR", today: marketDay}));
  const subjects: Subject[] = sales.slice(total).map((sale) => ({...subjectOf(sale), makers: [{maker: "marrowfield", probability: 0.8}, {maker: null, probability: 0.2}], years: {first: 1960, shares: [0, 0, 0, 1, 2, 5, 8, 3, 1, 0, 0, 0, 0, 1, 2, 3, 2, 1]}}));
  const [first] = timed(() => subjects.forEach((subject) => priceGarment(comparables, subject, {terms})));
  const times: number[] = [];
  const cpu = process.cpuUsage();
  for (let round = 0; round < rounds; round++) for (const subject of subjects) times.push(timed(() => priceGarment(comparables, subject, {terms, asked: 9_000, looks}))[0]);
  const spent = process.cpuUsage(cpu);
  const [lot] = timed(() => priceLot(comparables, Array.from({length: 200}, (_, i) => ({id: String(i), subject: subjects[i % subjects.length]!})), {terms, unexamined: 100, sampled: [], random: seeded(9).next}));
  return [
    {name: `worth: ${total.toLocaleString("en")} sales made ready`, value: ready, unit: "ms"},
    {name: "worth: first prices, four kinds learned and checked", value: first, unit: "ms"},
    {name: "worth: a price from 100,000 sales", value: quantile(times, 0.5), unit: "ms median", most: 30, note: `p95 ${quantile(times, 0.95).toFixed(1)} ms, ${((spent.user + spent.system) / 1000 / times.length).toFixed(1)} ms of processor time`},
    {name: "worth: a lot of 200 and 100 not looked at", value: lot, unit: "ms"},
    ...accuracy(),
  ];
}

function accuracy(): Line[] {
  const drift = ({sale}: {readonly sale: {readonly soldOn: string}}) => (0.04 * (Date.parse(marketDay) - Date.parse(sale.soldOn))) / (365.25 * 86_400_000);
  const made = [51, 52, 53, 54].map((seed) => {
    const sales = marketOf({sales: 1_500, seed});
    return tryOut(sales.slice(0, 1_200), sales.slice(1_200), subjectOf, marketDay, drift);
  });
  const real = [51, 52, 53, 54, 55, 56].map((seed) => tryOut(stones(seed).slice(0, 1_500), stones(seed).slice(1_500, 2_000), subjectOf, stonesDay));
  return [...linesOf("made-up sales", made), ...linesOf("public prices", real)];
}

function linesOf(of: string, trials: readonly Trial[]): Line[] {
  const mean = (pick: (trial: Trial) => number) => trials.reduce((sum, trial) => sum + pick(trial), 0) / trials.length;
  const [eight, nine] = [mean((t) => t.eight), mean((t) => t.nine)];
  return [
    {name: `worth, ${of}: nine in ten hold, off by`, value: Math.abs(nine - 0.9), unit: "", most: 0.02, note: `${(100 * nine).toFixed(1)} in 100, and ${(100 * eight).toFixed(1)} of eight in ten`},
    {name: `worth, ${of}: error beside a plain median's`, value: mean((t) => t.error) / mean((t) => t.plainError), unit: "times", most: 1, note: `median |log| ${mean((t) => t.error).toFixed(3)} against ${mean((t) => t.plainError).toFixed(3)}; nine in ten span ${mean((t) => t.width).toFixed(2)} times`},
  ];
}

function timed<T>(run: () => T): [number, T] {
  const start = performance.now();
  const value = run();
  return [performance.now() - start, value];
}
