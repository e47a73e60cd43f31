// One or several looks at a line made into one row with its doubt: readings, places, and the score of any text.
import {standing} from "../align.ts";
import type {Characters, Quad} from "../model.ts";
import type {OpenRow} from "../reader.ts";
import {likeliest} from "./likeliest.ts";
import {peaksOf, saidAt} from "./peaks.ts";
import {scoreOf} from "./score.ts";
import {blanksAfter, spacingChance, spacings} from "./spacing.ts";
import type {Alphabet, Table} from "./table.ts";

const mostStrings = 60;
const mostAlternatives = 12;
/** Ways to set blanks in one reading that are listed. */
const mostSpacings = 12;
/** An alternative less likely than this is not worth showing. */
const leastAlternative = 0.001;

/**
 * A row from the tables of one line: the chances of a reading are the mean over the looks.
 * @param tables  at least one, all over the same alphabet
 */
export function openRow(tables: readonly Table[], alphabet: Alphabet, quad: Quad): OpenRow {
  const {characters} = alphabet;
  const classOf = new Map(characters.map((character, k) => [character, k]));
  const bareScores = cached((bare) => looksAt(bare));
  const looksAt = (bare: string): {p: number; blanks: number[]; peaks: number[]}[] => {
    const reading = [...bare].map((character) => classOf.get(character) ?? 0);
    if (reading.includes(0)) return [];
    return tables.flatMap((table) => {
      const peaks = peaksOf(table, reading);
      return peaks === null ? [] : [{p: scoreOf(table, reading), blanks: blanksAfter(table, alphabet, reading, peaks), peaks}];
    });
  };
  const score = (text: string): number => {
    if (text !== text.trim() || text.includes("  ")) return 0;
    return bareScores(text.replace(/ /g, "")).reduce((sum, {p, blanks}) => sum + p * spacingChance(text, blanks), 0) / tables.length;
  };
  const pool = new Set(tables.flatMap((table) => likeliest(table, mostStrings)).map(({reading}) => reading.map((k) => characters[k]!).join("")));
  const found = [...pool].filter((bare) => bare.length <= 40).flatMap((bare) => {
    const looks = bareScores(bare);
    const sum = looks.reduce((total, {p}) => total + p, 0);
    const blanks = (looks[0]?.blanks ?? []).map((_, i) => looks.reduce((total, look) => total + look.p * look.blanks[i]!, 0) / sum);
    return spacings(bare, blanks, mostSpacings).map(({text, p}) => ({text, p: (p * sum) / tables.length}));
  });
  // Blanks were weighed as if all looks agreed on them; the few that are listed are weighed look by look.
  const likely = found.sort((a, b) => b.p - a.p).slice(0, mostStrings);
  const strings = likely.map(({text}) => ({text, p: Math.min(1, score(text))})).sort((a, b) => b.p - a.p);
  const mass = Math.min(1, strings.reduce((sum, {p}) => sum + p, 0));
  const best = strings[0]?.text ?? "";
  const looks = tables.map((table) => ({table, peaks: peaksOf(table, [...best.replace(/ /g, "")].map((character) => classOf.get(character)!))}));
  const said = looks.flatMap(({table, peaks}) => (peaks === null ? [] : [peaks.map((step) => saidAt(table, step))]));
  return {row: {quad, best, places: placesOf(characters, best, said, strings), strings, none: 1 - mass, mass}, score};
}

/** Remembers what was asked before: the readings of a row share their sums. */
function cached<T>(of: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const now = of(text);
    if (known.size < 2000) known.set(text, now);
    return now;
  };
}

/** The alternatives of every character of the likeliest text: its kind from where it is said most clearly, its being there at all from the readings. */
function placesOf(characters: readonly string[], text: string, said: readonly (readonly Float64Array[])[], strings: readonly {text: string; p: number}[]): Characters[] {
  const mass = strings.reduce((sum, {p}) => sum + p, 0);
  const missing = new Float64Array(text.length);
  for (const one of strings.slice(0, 24)) standing(text, one.text).forEach((character, i) => character === "" && (missing[i]! += one.p / mass));
  let place = 0;
  return [...text].map((character, i) => {
    const there = Math.max(0, 1 - missing[i]!);
    if (character === " ") return [{character, p: there}, {character: "", p: 1 - there}].sort((a, b) => b.p - a.p);
    const at = place++;
    const means = characters.map((_, k) => said.reduce((sum, places) => sum + places[at]![k]!, 0) / Math.max(1, said.length));
    const all = characters.map((one, k) => ({character: one, p: Math.min(1, k === 0 ? missing[i]! : means[k]! * there)}));
    const alternatives = all.filter(({p}) => p >= leastAlternative).sort((a, b) => b.p - a.p).slice(0, mostAlternatives);
    return alternatives.length > 0 ? alternatives : [{character, p: there}];
  });
}
