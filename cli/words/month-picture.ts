// A small picture of the months: a column for each year, a row for each month, darker where the garment more likely belongs.
import type {Finding} from "../../engine/index.ts";

const names = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
/** A shade holds from this part of the likeliest month's probability on. */
const shades: readonly (readonly [from: number, sign: string])[] = [[0.5, "█"], [0.2, "▓"], [0.05, "▒"], [0.01, "░"], [0.001, "·"]];
/** Decades less likely than this are left out. */
const leastDecade = 0.005;

/** Says what the shades mean. */
export const shadeWords = "█ the likeliest month, and any at least half as likely; ▓ a fifth, ▒ a twentieth, ░ a hundredth, · a thousandth as likely";

/**
 * Draws the decades that matter, as many beside each other as fit.
 * @param width  columns
 */
export function monthPicture(finding: Finding, width: number): string[] {
  const decades = finding.decades.filter(({probability}) => probability >= leastDecade).map(({from}) => from);
  const wide = decades.length * 21 + 4 <= width ? 2 : 1;
  const perBand = Math.max(1, Math.floor((width - 4) / (10 * wide + 1)));
  const lines: string[] = [];
  for (let i = 0; i < decades.length; i += perBand) lines.push(...(i > 0 ? [""] : []), ...band(finding, decades.slice(i, i + perBand), wide));
  return lines;
}

function band(finding: Finding, decades: readonly number[], wide: number): string[] {
  const years = (decade: number) => Array.from({length: 10}, (_, i) => decade + i);
  const line = (head: string, cell: (year: number) => string) => (head + decades.map((decade) => ` ${years(decade).map(cell).join("")}`).join("")).trimEnd();
  return [
    `   ${decades.map((decade) => ` ${`${decade}s`.padEnd(10 * wide)}`).join("")}`.trimEnd(),
    line("   ", (year) => String(year % 10).padEnd(wide)),
    ...names.map((name, m) => line(name, (year) => shadeOf(finding, (year - 1900) * 12 + m, wide))),
  ];
}

function shadeOf({posterior, first, best}: Finding, month: number, wide: number): string {
  const part = (posterior[month - first] ?? 0) / best.probability;
  const sign = shades.find(([from]) => part >= from)?.[1] ?? " ";
  return sign === "·" || sign === " " ? sign.padEnd(wide) : sign.repeat(wide);
}
