// Reads a row by a layout of the book: fields in their order, separators that may be missing or different.
import type {LayoutRow} from "../rule/schema.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
import {boundaryChance, joinedFields, listedSeparator} from "../cell/boundary.ts";
import {codeFits, dateFits, textFits, type FieldFit} from "./fields.ts";
import {figureFits} from "./figures.ts";
import {parseKey, type Bracket, type CodeName, type RowParse} from "./parse.ts";
import {isSeparator, type PrintedRow, type Separator} from "../cell/printed-row.ts";

/** What the rows of a maker are made of: schemes, the widest code of each list, prefixes, widths of the plain figures. */
export interface RowGrammar {
  readonly schemes: readonly ReadyScheme[];
  readonly codes: Readonly<Record<CodeName, {widest: number; prefix?: {share: number; figures: number}} | null>>;
  readonly figures: Readonly<Record<"size" | "inspector" | "other", readonly [number, number]>>;
}

interface Way extends Omit<RowParse, "brackets"> {
  readonly at: number;
  readonly best: number;
  readonly brackets: readonly Bracket[];
}

type Field = LayoutRow["fields"][number];

/**
 * Every way to read a row by a layout, ways with the same date and codes joined into one.
 * @cost  fields × cells × ways; ways are few since only dates and codes tell them apart
 */
export function parseByLayout(row: PrintedRow, layout: LayoutRow, grammar: RowGrammar): RowParse[] {
  let ways = new Map<string, Way>([["0", {at: 0, chance: 1, best: 1, date: null, plant: null, lot: null, fabric: null, brackets: []}]]);
  let separator: Separator | null = null;
  for (const field of layout.fields) {
    if (isSeparator(field)) {
      separator = field;
      continue;
    }
    const next = new Map<string, Way>();
    for (const way of ways.values()) {
      if (way.at >= row.cells.length) continue;
      const between = way.at === 0 ? 1 : boundaryChance(row.boundaries[way.at - 1]!, separator === null ? joinedFields : listedSeparator(separator));
      if (between === 0) continue;
      for (const fit of fitsOf(field, row, way.at, grammar)) join(next, step(way, field, fit, between));
    }
    ways = next;
    separator = null;
  }
  return [...ways.values()].filter((way) => way.at === row.cells.length);
}

function fitsOf(field: Exclude<Field, " " | "-" | "." | "/">, row: PrintedRow, at: number, grammar: RowGrammar): FieldFit[] {
  if (typeof field === "object") return textFits(row, at, field.text);
  if (field === "date") return dateFits(row, at, grammar.schemes);
  if (field === "size" || field === "inspector" || field === "other") return figureFits(row, at, grammar.figures[field]);
  const codes = grammar.codes[field];
  return codes ? codeFits(row, at, codes.widest, codes.prefix) : figureFits(row, at, [1, 4]);
}

function step(way: Way, field: Field, fit: FieldFit, between: number): Way {
  const name = typeof field === "object" ? "word" : field;
  const code = fit.code ?? null;
  return {
    at: fit.until,
    chance: way.chance * between * fit.chance,
    best: way.best * between * fit.chance,
    date: fit.date ?? way.date,
    plant: field === "plant" ? code : way.plant,
    lot: field === "lot" ? code : way.lot,
    fabric: field === "fabric" ? code : way.fabric,
    brackets: [...way.brackets, {field: name, from: code?.from ?? way.at, until: fit.until}],
  };
}

function join(ways: Map<string, Way>, way: Way): void {
  const key = `${way.at}|${parseKey(way)}`;
  const same = ways.get(key);
  if (!same) ways.set(key, way);
  else {
    const better = way.best > same.best ? way : same;
    ways.set(key, {...better, chance: same.chance + way.chance});
  }
}
