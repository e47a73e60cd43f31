// Reads a row of unknown layout: a date and a plant code may stand anywhere, in any order, and the rest is noise.
import type {ReadyScheme} from "../scheme/scheme.ts";
import {boundaryChance, nextToNoise} from "../cell/boundary.ts";
import {runNoise} from "../cell/noise.ts";
import {dateSpans, type DateSpan} from "./date-span.ts";
import {innerBoundaries} from "./figures.ts";
import type {RowGrammar} from "./layout.ts";
import type {Bracket, CellSpan, RowParse} from "./parse.ts";
import type {PrintedRow} from "../cell/printed-row.ts";

const included = 0.4;
/** Dated ways below this part of the likeliest are left out: a dozen worn figures can be read in thousands of ways that never matter. */
const trifle = 1e-12;

/** At most this many pairs of a date and a plant are tried in one row. */
const mostPairs = 10_000;

interface Placed {
  readonly span: CellSpan;
  /** Without what the cells themselves weigh. */
  readonly chance: number;
  /** The most that its cells can weigh. */
  readonly most: number;
  readonly date: DateSpan | null;
}

/** Every way to read a row of unknown layout. Chances follow docs/model.md, section 5. */
export function parseFreely(row: PrintedRow, grammar: RowGrammar): RowParse[] {
  const runs = noiseRuns(row);
  const every = placedDates(row, grammar.schemes);
  const plants = grammar.codes.plant ? placedPlants(row, grammar.codes.plant.widest) : [];
  const dates = likeliest(every, mostPairs / Math.max(1, plants.length));
  const knowsPlants = grammar.codes.plant !== null;
  const without = (count: number) => (1 - included) ** count;
  const n = row.cells.length;
  const result: RowParse[] = [];
  let best = 0;
  const add = (chance: number, date: Placed | null, plant: Placed | null) => {
    const most = date ? chance * date.most : chance;
    if (most === 0 || (date && most <= best * trifle)) return;
    if (date && most > best) best = most;
    result.push(way(chance, date, plant));
  };
  const absent = knowsPlants ? without(1) : 1;

  add(without(knowsPlants ? 2 : 1) * runs.whole(0, n), null, null);
  for (const date of dates) {
    add(included * absent * runs.whole(0, date.span.from) * date.chance * runs.whole(date.span.until, n), date, null);
  }
  for (const plant of plants) {
    add(without(1) * included * runs.whole(0, plant.span.from) * plant.chance * runs.whole(plant.span.until, n), null, plant);
    for (const date of dates) {
      const [first, second] = date.span.from < plant.span.from ? [date, plant] : [plant, date];
      if (second.span.from < first.span.until) continue;
      const chance = (included * included) / 2;
      const middle = runs.whole(first.span.until, second.span.from);
      add(chance * runs.whole(0, first.span.from) * first.chance * middle * second.chance * runs.whole(second.span.until, n), date, plant);
    }
  }
  return result.filter(({chance, date}) => !date || chance * date.most > best * trifle);
}

const unknownMaker: RowGrammar = {schemes: [], codes: {plant: null, lot: null, fabric: null}, figures: {size: [2, 2], inspector: [1, 2], other: [1, 4]}};

/**
 * Chance of a row of unknown layout on the label of a maker of whom nothing is known: the same in every month, since no scheme reads its dates.
 */
export function chanceUnread(row: PrintedRow): number {
  return parseFreely(row, unknownMaker).reduce((sum, {chance, date}) => sum + chance * (date ? date.unknown : 1), 0);
}

/** The likeliest of many; a row so long that it can be read in tens of thousands of ways says nothing anyway. */
function likeliest(placed: readonly Placed[], most: number): readonly Placed[] {
  if (placed.length <= most) return placed;
  return [...placed].sort((a, b) => b.chance * b.most - a.chance * a.most || a.span.from - b.span.from).slice(0, Math.max(1, Math.floor(most)));
}

function way(chance: number, date: Placed | null, plant: Placed | null): RowParse {
  const brackets: Bracket[] = [];
  if (date) brackets.push({field: "date", from: date.span.from, until: date.span.until});
  if (plant) brackets.push({field: "plant", ...plant.span});
  brackets.sort((a, b) => a.from - b.from);
  return {chance, date: date?.date ?? null, plant: plant?.span ?? null, lot: null, fabric: null, brackets};
}

function placedDates(row: PrintedRow, schemes: readonly ReadyScheme[]): Placed[] {
  return row.cells.flatMap((_, from) => dateSpans(row, from, schemes).map((date) => ({span: date, chance: 1, most: date.most, date})));
}

function placedPlants(row: PrintedRow, widest: number): Placed[] {
  return row.cells.flatMap((_, from) =>
    Array.from({length: Math.min(widest, row.cells.length - from)}, (_, i) => from + i + 1).map((until) => ({
      span: {from, until},
      chance: innerBoundaries(row, from, until),
      most: 1,
      date: null,
    })),
  );
}

/**
 * Chances of runs of noise. `whole(from, until)` counts the run's length, its cells, and its boundaries, the one before the run and the
 * one after it included, so that runs and fields multiply without counting a boundary twice: an empty run between two fields has the one boundary.
 */
function noiseRuns(row: PrintedRow) {
  const n = row.cells.length;
  const edge = (i: number) => (i <= 0 || i >= n ? 1 : boundaryChance(row.boundaries[i - 1]!, nextToNoise));
  const table: number[][] = row.cells.map((_, from) => {
    const line: number[] = [];
    let chance = 0.5;
    for (let until = from + 1; until <= n; until++) {
      chance *= 0.5 * runNoise(row.cells[until - 1]!.weights) * (until - 1 > from ? edge(until - 1) : 1);
      line.push(chance);
    }
    return line;
  });
  return {
    whole(from: number, until: number): number {
      if (from === until) return 0.5 * edge(from);
      return table[from]![until - from - 1]! * edge(from) * edge(until);
    },
  };
}
