// Puts rows together that a finder of lines took apart: pieces of print side by side on one line are one row of the label.
import type {Quad, ReadRow} from "../../reader/model.ts";

/** A row that can still be asked about, as the recogniser itself says. */
export interface AskableRow {
  readonly row: ReadRow;
  readonly score: (text: string) => number;
}

/** Widest gap between two pieces of one row, in heights of the print. Source: own choice; a wide blank is about half a height. */
const widestGap = 1.8;
const mostPieces = 30;
const mostStrings = 60;
/** Chance that a gap the finder saw is a printed blank. Source: own choice. */
const blank = 0.85;
/** How many characters the cut may lie away from where the first piece's likeliest reading ends. */
const looseCut = 2;

/**
 * Rows in the same order, pieces of one line put together; everything else is handed back as it came.
 * A text of both is as likely as its two halves, over all cuts near the middle, with a blank between them or none.
 */
export function joinRows(rows: readonly AskableRow[]): AskableRow[] {
  const left = new Set(rows);
  const result: {row: AskableRow; place: number}[] = [];
  const byLeft = [...rows].sort((a, b) => a.row.quad[0]!.x - b.row.quad[0]!.x);
  for (const first of byLeft) {
    if (!left.delete(first)) continue;
    let whole = first;
    let place = rows.indexOf(first);
    for (let next = nextTo(whole, left); next; next = nextTo(whole, left)) {
      left.delete(next);
      place = Math.min(place, rows.indexOf(next));
      whole = joined(whole, next);
    }
    result.push({row: whole, place});
  }
  return result.sort((a, b) => a.place - b.place).map(({row}) => row);
}

function nextTo(row: AskableRow, left: ReadonlySet<AskableRow>): AskableRow | null {
  const near = [...left].map((other) => ({other, gap: gapBetween(row.row.quad, other.row.quad)})).filter(({gap}) => gap !== null);
  return near.length === 0 ? null : near.reduce((best, one) => (one.gap! < best.gap! ? one : best)).other;
}

/** Gap from the end of one piece to the beginning of another, in heights; null when they do not stand on one line. */
function gapBetween(a: Quad, b: Quad): number | null {
  const end = {x: (a[1]!.x + a[2]!.x) / 2, y: (a[1]!.y + a[2]!.y) / 2};
  const begin = {x: (b[0]!.x + b[3]!.x) / 2, y: (b[0]!.y + b[3]!.y) / 2};
  const long = Math.hypot(a[1]!.x - a[0]!.x, a[1]!.y - a[0]!.y);
  const [ha, hb] = [a, b].map((quad) => (Math.hypot(quad[3]!.x - quad[0]!.x, quad[3]!.y - quad[0]!.y) + Math.hypot(quad[2]!.x - quad[1]!.x, quad[2]!.y - quad[1]!.y)) / 2) as [number, number];
  const height = Math.min(ha, hb);
  if (!(long > 0) || !(height > 0) || Math.max(ha, hb) > 1.8 * height) return null;
  const [ux, uy] = [(a[1]!.x - a[0]!.x) / long, (a[1]!.y - a[0]!.y) / long];
  const [dx, dy] = [begin.x - end.x, begin.y - end.y];
  const along = (dx * ux + dy * uy) / height;
  // A single character has no direction of its own to speak of: its neighbour may lie a little off.
  return Math.abs(dy * ux - dx * uy) < 0.45 * height && along > -0.6 && along < widestGap ? along : null;
}

function joined(a: AskableRow, b: AskableRow): AskableRow {
  const weights = new Map<string, number>();
  for (const one of a.row.strings.slice(0, mostPieces)) {
    for (const other of b.row.strings.slice(0, mostPieces)) {
      for (const [sign, share] of [[" ", blank], ["", 1 - blank]] as const) {
        const text = one.text + sign + other.text;
        weights.set(text, (weights.get(text) ?? 0) + one.p * other.p * share);
      }
    }
  }
  const strings = [...weights].map(([text, p]) => ({text, p})).filter(({text}) => text.length <= 60).sort((x, y) => y.p - x.p).slice(0, mostStrings);
  const mass = Math.min(1, strings.reduce((sum, {p}) => sum + p, 0));
  const best = `${a.row.best} ${b.row.best}`;
  const gap = [{character: " ", p: blank}, {character: "", p: 1 - blank}];
  const quad: Quad = [a.row.quad[0]!, b.row.quad[1]!, b.row.quad[2]!, a.row.quad[3]!];
  return {row: {...a.row, quad, best, places: [...a.row.places, gap, ...b.row.places].slice(0, 60), strings, mass, none: 1 - mass}, score: scoreOfBoth(a, b)};
}

function scoreOfBoth(a: AskableRow, b: AskableRow): (text: string) => number {
  const known = [new Map<string, number>(), new Map<string, number>()] as const;
  const ask = (side: 0 | 1, text: string) => {
    let score = known[side].get(text);
    if (score === undefined) known[side].set(text, (score = (side === 0 ? a : b).score(text)));
    return score;
  };
  const middle = a.row.best.length;
  return (text) => {
    let sum = 0;
    for (let cut = Math.max(1, middle - looseCut); cut <= Math.min(text.length - 1, middle + looseCut); cut++) {
      if (text[cut] === " ") {
        if (cut + 1 < text.length) sum += blank * ask(0, text.slice(0, cut)) * ask(1, text.slice(cut + 1));
      } else if (text[cut - 1] !== " ") sum += (1 - blank) * ask(0, text.slice(0, cut)) * ask(1, text.slice(cut));
    }
    return sum;
  };
}
