// The ribbon draws what the engine computed: one cell for each month that can be seen, the likeliest marked, the rest in proportion.
import {createElement} from "react";
import {renderToStaticMarkup} from "react-dom/server";
import {expect, test} from "vitest";
import {month, type Brief} from "../../../engine/index.ts";
import {StitchLine} from "../../../web/plot/stitch-line.tsx";
import {darkness, gutter, legendOf, YearRibbon, yearX} from "../../../web/plot/year-ribbon.tsx";
import {yearsShown} from "../../../web/plot/year-scale.ts";

const first = month(1960, 1);
function briefOf(parts: Readonly<Record<number, number>>, n = 240): Pick<Brief, "first" | "posterior" | "best"> {
  const posterior = new Float64Array(n);
  for (const [t, p] of Object.entries(parts)) posterior[Number(t)] = p;
  const best = posterior.indexOf(Math.max(...posterior));
  return {first, posterior, best: {month: (first + best) as Brief["first"], probability: posterior[best] as Brief["best"]["probability"]}};
}

const ribbon = (brief: ReturnType<typeof briefOf>, years = {from: 1960, until: 1979}) => renderToStaticMarkup(createElement(YearRibbon, {brief, years, width: 426, label: "months"}));

test("one cell for each month that can be seen, spoken with its share", () => {
  const svg = ribbon(briefOf({98: 0.77, 158: 0.2, 194: 0.03}));
  expect(svg.match(/<rect[^>]*class="cell/g)).toHaveLength(3);
  expect(svg).toContain("<title>March 1968: 77 in 100</title>");
  expect(svg.match(/class="cell best"/g)).toHaveLength(1);
});

test("a cell stands under its year and beside its month", () => {
  const svg = ribbon(briefOf({98: 1}));
  const [, x, y] = /<rect x="([\d.]+)" y="([\d.]+)"[^>]*class="cell best"/.exec(svg)!.map(Number);
  expect(x).toBeCloseTo(gutter + 8 * 20 + 0.5, 9);
  expect(y).toBeCloseTo(2 * 9 + 0.5, 9);
  expect(yearX(1980, {from: 1960, until: 1979}, 426)).toBe(426);
});

test("an open answer stays pale, a sure one is as dark as can be", () => {
  expect(darkness(0.8, 0.8)).toBe(1);
  expect(darkness(1 / 1500, 1 / 1500)).toBeLessThan(0.12);
  expect(darkness(0, 0)).toBe(0);
});

test("ribbons to be compared share their darkest shade; the legend has shades that the answer has", () => {
  const svg = renderToStaticMarkup(createElement(YearRibbon, {brief: briefOf({98: 0.2, 99: 0.2}), most: 0.8, years: {from: 1960, until: 1979}, width: 426, label: "months"}));
  expect([...svg.matchAll(/fill-opacity="([\d.]+)" class="cell/g)].map(([, dark]) => Number(dark))).toEqual([0.5, 0.5]);
  expect(legendOf(0.8)).toEqual([{dark: 1, p: 0.8}, {dark: 0.5, p: 0.2}, {dark: 0.2, p: expect.closeTo(0.032, 9)}]);
  expect(legendOf(1 / 1500)).toEqual([{dark: expect.closeTo(Math.sqrt(12 / 1500), 9), p: expect.closeTo(1 / 1500, 9)}]);
});

test("where all months are alike none is marked; the month pointed at is framed", () => {
  const flat = briefOf(Object.fromEntries(Array.from({length: 240}, (_, t) => [t, 1 / 240])));
  expect(ribbon(flat)).not.toContain("cell best");
  const svg = renderToStaticMarkup(createElement(YearRibbon, {brief: flat, at: month(1968, 3), years: {from: 1960, until: 1979}, width: 426, label: "months"}));
  expect(svg).toContain(`<rect x="${gutter + 8 * 20 - 1}" y="17" width="22" height="11" class="ribbon-at"`);
});

test("the years shown hold all that matters, at least a dozen, and never run over the axis", () => {
  expect(yearsShown(briefOf({98: 1}), false)).toEqual({from: 1962, until: 1973});
  expect(yearsShown(briefOf({0: 0.5, 239: 0.5}), false)).toEqual({from: 1960, until: 1979});
  expect(yearsShown(briefOf({98: 1}), true)).toEqual({from: 1960, until: 1979});
});

test("a stitch line is firm between usual months and soft at its ends; an open end runs to the edge", () => {
  const years = {from: 1960, until: 1979};
  const line = (window: Parameters<typeof StitchLine>[0]["window"]) => renderToStaticMarkup(createElement(StitchLine, {window, years, width: 426}));
  const soft = line({begins: ["1965-01", "1967-01"], ends: ["1970-01", "1972-01"]});
  expect([...soft.matchAll(/d="M([\d.]+) 5H([\d.]+)" class="(\w+)"/g)].map(([, a, b, kind]) => [Number(a), Number(b), kind])).toEqual([[126, 166, "soft"], [166, 226, "firm"], [226, 266, "soft"]]);
  expect(line({begins: ["1965-01", "1965-01"]})).toContain('M126 5H426" class="firm"');
  expect(line(null)).toContain("loose");
});
