// A row of a reader for tests, from a text that every place may be mistaken for another by a little.
import type {ReadRow} from "../../../reader/model.ts";

/** A reader that gives each listed text its chance, and nothing to others. */
export function madeRow(chances: Readonly<Record<string, number>>, left = 0): {row: ReadRow; score: (text: string) => number} {
  const strings = Object.entries(chances).map(([text, p]) => ({text, p})).sort((a, b) => b.p - a.p);
  const best = strings[0]!.text;
  const mass = strings.reduce((sum, {p}) => sum + p, 0);
  const quad = [{x: left, y: 0}, {x: left + best.length * 10, y: 0}, {x: left + best.length * 10, y: 20}, {x: left, y: 20}];
  const places = [...best].map((character) => [{character, p: 0.7}, {character: "", p: 0.02}, ...[..."0123456789"].filter((one) => one !== character).map((one) => ({character: one, p: 0.03}))]);
  return {row: {quad, best, places, strings, none: 1 - mass, mass}, score: (text) => chances[text] ?? 0};
}
