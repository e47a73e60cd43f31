// Sales made up for the browser tests, always the same: older, better kept and better known things bring more.
import {grades} from "../../state/model.ts";

const kinds = [["trousers", 100], ["jacket", 160], ["shirt", 60]] as const;
const makers = [["marrowfield", 1.4], ["hollin", 1.1], ["", 0.8]] as const;

/** A number in 0 to 1, by a multiplicative step; the same seed gives the same ones. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

/** @returns a table with a line of names that do not all speak for themselves */
export function madeUpSales(count: number, seed = 20_261_125): string {
  const next = numbers(seed);
  const lines = Array.from({length: count}, (_, i) => {
    const [kind, usual] = kinds[Math.floor(next() * kinds.length)]!;
    const [maker, known] = makers[Math.floor(next() * makers.length)]!;
    const year = 1955 + Math.floor(next() * 30);
    const grade = grades[Math.floor(next() * grades.length)]!;
    const luck = Math.exp((next() + next() + next() - 1.5) * 0.4);
    const price = Math.round(usual * known * 1.03 ** (1985 - year) * (1.3 - 0.1 * grades.indexOf(grade)) * luck * 100);
    const sold = new Date(Date.UTC(2025, 0, 1 + Math.floor(next() * 600))).toISOString().slice(0, 10);
    return [sold, kind, maker, year, year + 2, `W ${28 + (i % 10)} L 32`, grade, `${Math.floor(price / 100)}.${String(price % 100).padStart(2, "0")}`, ["market stall", "auction", "own shop"][i % 3]].join(",");
  });
  return ["Date,What,Brand,Year,Until,Size,Condition,Sold for,Where", ...lines].join("\n");
}
