// Scores in lines of text, for the bench and for long test runs.
import {binOf, byDecile, flatness, type Bin} from "./reliability.ts";
import type {Said, Scores} from "./score.ts";

const percent = (x: number) => `${(100 * x).toFixed(1)} %`;

/** A decile as "said so/count (standard errors)". */
const sayBin = ({said, so, count, errors}: Bin) => `${percent(said)} → ${percent(so)} of ${count} (${errors >= 0 ? "+" : ""}${errors.toFixed(1)} SE)`;

/** Everything that was scored, a line each. */
export function sayScores(name: string, scores: Scores): string[] {
  const share = (count: number) => percent(count / scores.draws);
  const lines = [`${name}: ${scores.draws} draws`];
  lines.push(`  sets, mass → truth inside: ${scores.sets.map((set) => sayBin(binOf(set))).join("; ")}`);
  lines.push(`  before no earlier than: ${share(scores.tooEarly)}; after no later than: ${share(scores.tooLate)}; flatness ${flatness(scores.transform).toFixed(1)} on 19 degrees`);
  const deciles = (what: string, said: readonly Said[]) => {
    if (said.length > 0) lines.push(`  ${what}, said → so, by decile:`, ...byDecile(said).map((bin) => `    ${sayBin(bin)}`));
  };
  deciles("best month", scores.bestMonth);
  deciles("best year", scores.bestYear);
  deciles("mark is stray", scores.strayMarks);
  deciles("piece is stray", scores.strayPieces);
  deciles("row reading", scores.readings);
  deciles("maker", scores.makers);
  return lines;
}

/** The numbers worth keeping from run to run. */
export function keptScores(scores: Scores) {
  const round = (x: number) => Number(x.toFixed(4));
  const short = (said: readonly Said[]) => byDecile(said).map((bin) => [round(bin.said), round(bin.so), bin.count]);
  return {
    draws: scores.draws,
    sets: scores.sets.map((set) => [round(binOf(set).said), round(binOf(set).so)]),
    flatness: round(flatness(scores.transform)),
    bestYear: short(scores.bestYear),
    strayMarks: short(scores.strayMarks),
    strayPieces: short(scores.strayPieces),
    readings: short(scores.readings),
    makers: short(scores.makers),
  };
}
