// A row of characters as the owner typed it or a reader saw it: cells with doubt, and what stands between them.
import type {RowText} from "../rule/garment.ts";
import {typedCell, unreadableCell, type CellWeights} from "./look-alike.ts";

/** What can stand between two neighbouring characters. */
export const separators = ["", " ", "-", ".", "/"] as const;
export type Separator = (typeof separators)[number];
/** Whether a sign is a separator. */
export const isSeparator = (sign: unknown): sign is Exclude<Separator, ""> => sign === " " || sign === "-" || sign === "." || sign === "/";

/** Weight of each separator at one boundary, in the order of `separators`; a plain typed boundary has a single 1. */
export type BoundaryWeights = readonly number[];

export interface PrintedCell {
  readonly weights: CellWeights;
  /** The largest weight. */
  readonly top: number;
  /** How the cell is shown again: its character, ? or 3/8. */
  readonly shown: string;
  readonly doubtful: boolean;
}

export interface PrintedRow {
  readonly cells: readonly PrintedCell[];
  /** One fewer than cells. */
  readonly boundaries: readonly BoundaryWeights[];
  readonly at: string | null;
  /** The row in one line, for messages. */
  readonly text: string;
  /** Tells rows apart in caches. */
  readonly key: string;
  /** What the whole row may be, with weights that add up to 1; the likeliest has the cells above. None for a row as typed: see `versionsOf`. */
  readonly versions: readonly RowVersion[];
  /** It is itself one of several versions of a row. */
  readonly oneOfSeveral: boolean;
}

/** One of several whole readings of a row. */
export interface RowVersion {
  readonly row: PrintedRow;
  readonly weight: number;
}

/** A row that could not be understood: what stands there and why it does not read. */
export interface RowSlip {
  readonly slip: string;
}

const boundary = (separator: Separator): BoundaryWeights => separators.map((s) => (s === separator ? 1 : 0));
const plain = new Map(separators.map((s) => [s, boundary(s)]));

/**
 * Reads a row as typed.
 * `?` is an unreadable character, `(3/8)` is 3 or 8 alike, `(8:80/3:15/6:5)` weighs them. Blanks in a row are one gap; blanks around
 * a dash, dot or slash are dropped, and so are other signs, which say nothing of a date.
 * @returns the row, or what does not read
 * @example
 * readTypedRow("3 (3/8)  21").cells.length // -> 4
 */
export function readTypedRow(typed: string, at: string | null = null): PrintedRow | RowSlip {
  const cells: PrintedCell[] = [];
  const between: Separator[] = [];
  let pending: Separator = "";
  const text = typed.toUpperCase().slice(0, 200);
  const add = (cell: PrintedCell) => {
    if (cells.length > 0) between.push(pending);
    cells.push(cell);
    pending = "";
  };
  for (let i = 0; i < text.length; i++) {
    const sign = text[i]!;
    if (sign === "(") {
      const close = text.indexOf(")", i);
      const cell = close < 0 ? null : readChoice(text.slice(i + 1, close));
      if (!cell) return {slip: `${text.slice(i, close < 0 ? undefined : close + 1)} is not a choice like (3/8) or (8:80/3:20)`};
      add(cell);
      i = close;
    } else if (sign === "?") {
      add({weights: unreadableCell, top: 0.1, shown: "?", doubtful: true});
    } else if (/[0-9A-Z]/.test(sign)) {
      add({weights: typedCell(sign), top: typedCell(sign).get(sign)!, shown: sign, doubtful: false});
    } else if (/[-–—]/.test(sign)) {
      pending = "-";
    } else if (sign === "." || sign === "/") {
      pending = sign;
    } else if (/\s/.test(sign) && pending === "") {
      pending = " ";
    }
  }
  if (cells.length > mostCells) return {slip: `a row of ${cells.length} characters is longer than any that is printed on a label (${mostCells} at most); write each printed row by itself`};
  return oneVersion({cells, boundaries: between.map((s) => plain.get(s)!), at, text: at ? `${text.trim()} @${at}` : text.trim()});
}

function oneVersion(row: Omit<PrintedRow, "key" | "versions" | "oneOfSeveral">, oneOfSeveral = false): PrintedRow {
  return {...row, key: row.text, versions: [], oneOfSeveral};
}

/** Every whole reading of a row with its weight: of a row as typed the row itself. */
export const versionsOf = (row: PrintedRow): readonly RowVersion[] => (row.versions.length === 0 ? [{row, weight: 1}] : row.versions);

/** More characters than a printed row of a label has. */
const mostCells = 40;

function readChoice(inside: string): PrintedCell | null {
  const weights: Record<string, number> = {};
  for (const part of inside.split("/")) {
    const match = /^\s*([0-9A-Z])\s*(?::\s*(\d+(?:\.\d+)?)\s*%?\s*)?$/.exec(part);
    if (!match) return null;
    weights[match[1]!] = (weights[match[1]!] ?? 0) + (match[2] === undefined ? 1 : Number(match[2]));
  }
  return doubtfulCell(weights);
}

/** A cell that may be one of several characters; null when no weight is above 0. */
export function doubtfulCell(weights: Readonly<Record<string, number>>): PrintedCell | null {
  const entries = Object.entries(weights).filter(([character, w]) => w > 0 && Number.isFinite(w) && character.length === 1);
  const total = entries.reduce((sum, [, w]) => sum + w, 0);
  if (!(total > 0) || !Number.isFinite(total)) return null;
  entries.sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return {
    weights: new Map(entries.map(([character, w]) => [character.toUpperCase(), w / total])),
    top: entries[0]![1] / total,
    shown: entries.map(([character]) => character.toUpperCase()).join("/"),
    doubtful: entries.length > 1,
  };
}

/** Reads a row in any of the written forms of a garment file. */
export function readRow(row: RowText): PrintedRow | RowSlip {
  if (typeof row === "string") return readTypedRow(row);
  if ("readings" in row) return readVersions(row);
  if ("text" in row) return readTypedRow(row.text, row.at ?? null);
  const parts: string[] = [];
  for (const cell of row.cells) {
    if (typeof cell === "string") parts.push(cell);
    else {
      const read = doubtfulCell(cell.either);
      if (!read) return {slip: "a cell gives no character a weight above 0"};
      parts.push(`(${[...read.weights].map(([character, w]) => `${character}:${w.toFixed(9)}`).join("/")})`);
    }
  }
  return readTypedRow(parts.join(""), row.at ?? null);
}

/** The lightest readings are left out as long as they hold less than this part together. */
const leastTogether = 1e-6;
let lastVersions = 0;

/**
 * A row of which several whole readings are possible: what a reader of photos gives.
 * A reader's chances count every text alike, the engine's every character with 1/10: a reading counts by ten a character, or the shorter of two would be favoured.
 */
function readVersions({readings, none, at: edge}: Extract<RowText, {readings: unknown}>): PrintedRow | RowSlip {
  const at = edge ?? null;
  const weighed = readings.filter(({weight}) => weight > 0 && Number.isFinite(weight));
  const short = weighed.filter(({text}) => (text.match(/[0-9a-z?]/gi)?.length ?? 0) <= mostCells);
  const all: RowVersion[] = [];
  for (const {text, weight} of short.length > 0 ? short : weighed) {
    const row = readTypedRow(text, at);
    if ("slip" in row) return row;
    const cells = row.cells.map((cell) => (cell.doubtful ? cell : exactly(cell.shown)));
    all.push({row: oneVersion({...row, cells}, true), weight});
  }
  if (all.length === 0) return {slip: "none of the readings has a weight above 0"};
  // Against the heaviest and the longest, so that no number grows out of bounds.
  const most = Math.max(none, ...all.map(({weight}) => weight));
  const longest = Math.max(...all.map(({row}) => row.cells.length));
  const counted = (row: PrintedRow, weight: number): RowVersion => ({row, weight: (weight / most) * 10 ** (row.cells.length - longest)});
  const found = heaviest(all.map(({row, weight}) => counted(row, weight)));
  const best = found[0]!.row;
  if (none > 0) found.push(counted(unreadable(best, at), none));
  const total = found.reduce((sum, {weight}) => sum + weight, 0);
  const versions = found.map(({row, weight}) => ({row, weight: weight / total}));
  return {...best, key: `versions ${++lastVersions}`, versions, oneOfSeveral: false};
}

/** The heaviest first, the tail that hardly weighs left out. */
function heaviest(versions: readonly RowVersion[]): RowVersion[] {
  const sorted = [...versions].sort((a, b) => b.weight - a.weight || (a.row.text < b.row.text ? -1 : 1));
  let left = sorted.reduce((sum, {weight}) => sum + weight, 0) * leastTogether;
  while (sorted.length > 1 && (left -= sorted.at(-1)!.weight) > 0) sorted.pop();
  return sorted;
}

const exactCells = new Map<string, PrintedCell>();

/** A character that stands for itself alone. */
function exactly(character: string): PrintedCell {
  let cell = exactCells.get(character);
  if (!cell) exactCells.set(character, (cell = {weights: new Map([[character, 1]]), top: 1, shown: character, doubtful: false}));
  return cell;
}

/** Nothing known but how many characters there are. */
function unreadable({cells}: PrintedRow, at: string | null): PrintedRow {
  return readTypedRow("?".repeat(cells.length), at) as PrintedRow;
}

/** A piece of a row, by cell positions; `from` included, `until` not. */
export function sliceText(row: PrintedRow, from: number, until: number): string {
  return row.cells.slice(from, until).map((cell) => (cell.doubtful && cell.shown !== "?" ? `(${cell.shown})` : cell.shown)).join("");
}
