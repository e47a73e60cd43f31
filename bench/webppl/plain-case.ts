// A book and a garment as the tables that the WebPPL program reads: choices and presences only, and nothing of the engine's working.
import type {Book} from "../../engine/index.ts";
import type {Garment, Seen} from "../../engine/rule/garment.ts";
import type {ChoiceMark, Mark, PresenceMark, WindowText} from "../../engine/rule/schema.ts";
import {monthNumber} from "../../test/simulate/world.ts";

/** A small book or two, a garment, and the months considered. */
export interface SmallCase {
  readonly id: string;
  readonly books: readonly Book[];
  readonly garment: Garment;
  /** First and last month, like 1950-01. */
  readonly from: string;
  readonly until: string;
}

/** Months from the start of the axis. */
interface Span {
  readonly from: number;
  readonly until: number;
}

/** What the program reads; a world is one possible maker with one possible market. */
export interface PlainCase {
  readonly months: number;
  readonly worlds: readonly (Span & {
    readonly maker: string;
    readonly market: string;
    readonly weight: number;
    readonly marks: readonly object[];
    readonly pieces: readonly object[];
  })[];
}

export function plainCase({books, garment, from, until}: SmallCase): PlainCase {
  const start = monthNumber(from);
  const axis: Span = {from: 0, until: monthNumber(until) - start};
  const open = books.filter(({kind}) => kind === "public");
  const makers = garment.maker === undefined ? [null] : [garment.maker].flat().map((id) => books.find(({book}) => book === id)!);
  const worlds = makers.flatMap((maker) => {
    const span = maker ? coveredBy(maker, axis, start) : axis;
    const markets = garment.market === undefined ? Object.entries(maker?.markets ?? {}) : [[garment.market, 1] as const];
    const all = markets.reduce((sum, [, weight]) => sum + weight, 0);
    const held = [...open.map((book) => ({book, span: axis})), ...(maker ? [{book: maker, span}] : [])];
    return (markets.length > 0 ? markets : [["none", 1] as const]).map(([market, weight]) => ({
      maker: maker?.book ?? "none",
      market,
      weight: all > 0 ? weight / all : 1,
      ...span,
      marks: held.flatMap(({book, span: own}) => marksOf(book, garment, own, start, undefined)),
      pieces: held.flatMap(({book, span: own}) =>
        Object.entries(book.pieces).flatMap(([piece, {stray}]) => {
          const marks = marksOf(book, garment, own, start, piece);
          return marks.length > 0 ? [{stray, ...own, marks}] : [];
        }),
      ),
    }));
  });
  return {months: axis.until + 1, worlds};
}

function coveredBy({covers}: Book, axis: Span, start: number): Span {
  return {from: Math.max(axis.from, monthNumber(covers.from) - start), until: covers.until ? Math.min(axis.until, monthNumber(covers.until) - start) : axis.until};
}

function marksOf(book: Book, {saw}: Garment, span: Span, start: number, piece: string | undefined): object[] {
  return Object.entries(book.marks).flatMap(([id, mark]) => {
    const seen = saw[id] as Seen | undefined;
    return seen === undefined || mark.piece !== piece ? [] : [{id, ...span, stray: mark.stray, lost: mark.lost, seen: weightsOf(seen), ...tableOf(mark, start)}];
  });
}

/** What is seen, each possible value with its weight, the heaviest 1. */
function weightsOf(seen: Seen): Record<string, number> {
  if (typeof seen === "string") return {[seen]: 1};
  if (Array.isArray(seen)) return Object.fromEntries(seen.map((value) => [value, 1]));
  const most = Math.max(...Object.values(seen.either));
  return Object.fromEntries(Object.entries(seen.either).map(([value, weight]) => [value, weight / most]));
}

function tableOf(mark: Mark, start: number): object {
  if (mark.kind === "choice") return choiceTable(mark, start);
  if (mark.kind === "presence") return presenceTable(mark, start);
  throw new Error(`no table for a mark of the kind ${mark.kind}`);
}

function choiceTable({values, other}: ChoiceMark, start: number): object {
  const entries = Object.entries(values).map(([id, {window, weight, outside, variants}]) => ({
    id,
    weight,
    outside,
    window: numbered(window, start),
    variants: variants.map((variant) => ({markets: [variant.when.market].flat(), weight: variant.weight ?? weight, window: numbered(variant.window ?? window, start), outside})),
  }));
  return {kind: "choice", other, values: entries, ids: [...entries.map(({id}) => id), "other"]};
}

function presenceTable({window, inside, outside}: PresenceMark, start: number): object {
  return {kind: "presence", inside, outside, window: numbered(window, start)};
}

function numbered({begins, ends}: WindowText, start: number): object {
  const pair = (months: readonly string[] | null | undefined) => months?.map((month) => monthNumber(month) - start) ?? null;
  return {begins: pair(begins), ends: pair(ends)};
}
