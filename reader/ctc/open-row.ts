// One or several looks at a line made into one row with its doubt: readings, places, and the score of any text.
import {standing} from "../align.ts";
import type {Characters, Quad} from "../model.ts";
import type {OpenRow} from "../reader.ts";
import {likeliest} from "./likeliest.ts";
import {peaksOf, saidAt} from "./peaks.ts";
import {scoreOf} from "./score.ts";
import type {Alphabet, Table} from "./table.ts";

const mostStrings = 60;
const mostAlternatives = 12;
/** An alternative less likely than this is not worth showing. */
const leastAlternative = 0.001;

/**
 * A row from the tables of one line: the chances of a reading are the mean over the looks.
 * @param tables  at least one, all over the same alphabet
 */
export function openRow(tables: readonly Table[], {characters}: Alphabet, quad: Quad): OpenRow {
  const classOf = new Map(characters.map((character, k) => [character, k]));
  const blank = classOf.get(" ");
  const mean = (reading: readonly number[]) => tables.reduce((sum, table) => sum + scoreOf(table, reading), 0) / tables.length;
  const score = (text: string): number => {
    const reading = [...text].map((character) => classOf.get(character) ?? 0);
    if (reading.includes(0)) return 0;
    if (blank === undefined || text === "") return mean(reading);
    // A blank before or after the print says nothing.
    return mean(reading) + mean([blank, ...reading]) + mean([...reading, blank]) + mean([blank, ...reading, blank]);
  };
  const pool = new Set(tables.flatMap((table) => likeliest(table, mostStrings)).map(({reading}) => tidy(reading.map((k) => characters[k]!).join(""))));
  const found = [...pool].filter((text) => text.length <= 60).map((text) => ({text, p: Math.min(1, score(text))}));
  const strings = found.sort((a, b) => b.p - a.p).slice(0, mostStrings);
  const mass = Math.min(1, strings.reduce((sum, {p}) => sum + p, 0));
  const best = strings[0]?.text ?? "";
  return {row: {quad, best, places: placesOf(tables, characters, best, [...best].map((character) => classOf.get(character)!), strings), strings, none: 1 - mass, mass}, score};
}

const tidy = (text: string) => text.trim().replace(/ {2,}/g, " ");

/** The alternatives of every character of the likeliest text: its kind from where it is said most clearly, its being there at all from the readings. */
function placesOf(tables: readonly Table[], characters: readonly string[], text: string, reading: readonly number[], strings: readonly {text: string; p: number}[]): Characters[] {
  const mass = strings.reduce((sum, {p}) => sum + p, 0);
  const missing = new Float64Array(text.length);
  for (const one of strings.slice(0, 24)) standing(text, one.text).forEach((character, i) => character === "" && (missing[i]! += one.p / mass));
  const said = tables.flatMap((table) => {
    const peaks = peaksOf(table, reading);
    return peaks === null ? [] : [peaks.map((step) => saidAt(table, step))];
  });
  return [...text].map((character, i) => {
    const there = 1 - missing[i]!;
    const means = characters.map((_, k) => said.reduce((sum, places) => sum + (places[i]![k] ?? 0), 0) / Math.max(1, said.length));
    const all = characters.map((one, k) => ({character: one, p: k === 0 ? missing[i]! : means[k]! * there}));
    const alternatives = all.filter((one) => one.p >= leastAlternative).sort((a, b) => b.p - a.p).slice(0, mostAlternatives).map((one) => ({character: one.character, p: Math.min(1, one.p)}));
    return alternatives.length > 0 ? alternatives : [{character, p: there}];
  });
}
