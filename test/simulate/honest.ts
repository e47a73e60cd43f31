// What honest scores must satisfy: used by every calibration test, so that the thresholds stand in one place.
import {expect} from "vitest";
import {binOf, byDecile, flatness} from "./reliability.ts";
import {sayScores} from "./report.ts";
import type {Said, Scores} from "./score.ts";

/** TICKING_LONG=1 draws ten thousand garments a book; the everyday run draws fewer and its tolerance follows from the number. */
export const long = process.env.TICKING_LONG === "1";

/** How many to draw, and whether every number is printed. */
export const drawsOr = (everyday: number) => (long ? 10_000 : everyday);

/** Four standard errors: one honest check in some sixteen thousand fails; with a fixed seed it fails always or never. Own choice. */
const most = 4;
/** Deciles in which too little was said are not judged: the spread must be worth so many successes. */
const leastSpread = 5;
/** Chi-square, 19 degrees of freedom, upper 0.1 %. Source: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4 (from memory). */
export const flatEnough = 43.82;

export function show(name: string, scores: Scores): void {
  if (long) console.log(sayScores(name, scores).join("\n"));
}

/** The sets hold the truth as often as the mass they state, within two in a hundred of it in a long run. */
export function expectHonestSets({sets, draws}: Scores): void {
  for (const set of sets) {
    const {said, so} = binOf(set);
    const error = Math.sqrt((said * (1 - said)) / draws);
    expect(Math.abs(so - said), `said ${said}, so ${so}`).toBeLessThan(long ? 0.02 : most * error);
  }
  sets.forEach((set, i) => expect(binOf(set).said).toBeGreaterThanOrEqual([0.5, 0.9, 0.95][i]! - 1e-9));
}

/** No more of the truth lies beyond each bound than it says. */
export function expectHonestBounds({tooEarly, tooLate, draws}: Scores): void {
  const allowed = 0.025 + most * Math.sqrt((0.025 * 0.975) / draws);
  expect(tooEarly / draws).toBeLessThan(allowed);
  expect(tooLate / draws).toBeLessThan(allowed);
}

/** The true month lies evenly in the posterior. Source: Dawid 1984, J. Royal Statistical Society A 147:278-292 (from memory). */
export function expectFlat({transform}: Scores): void {
  expect(flatness(transform)).toBeLessThan(flatEnough);
}

/** In every decile, and over all, as many came true as was said. */
export function expectReliable(what: string, all: readonly Said[]): void {
  expect(all.length, what).toBeGreaterThan(0);
  for (const bin of [binOf(all), ...byDecile(all).filter(({count, said}) => count * said * (1 - said) >= leastSpread)]) {
    expect(Math.abs(bin.errors), `${what}: said ${bin.said}, so ${bin.so} of ${bin.count}`).toBeLessThan(most);
  }
}
