// Draws labels from a maker's book for made-up photos: the rows as they are printed, without a misreading, and the month they were printed in.
import type {Book} from "../../../engine/index.ts";
import type {MadeRow} from "../../photo/rows.ts";
import {drawRows} from "../../simulate/rows.ts";
import {drawValue} from "../../simulate/marks.ts";
import type {Random} from "../../simulate/random.ts";
import {codesOf, coveredMonths, drawCode, NothingToDraw, type World} from "../../simulate/world.ts";

export interface DrawnLabel {
  readonly maker: string;
  readonly kind: string;
  /** Months since January 1900. */
  readonly month: number;
  /** Rows of codes, top to bottom. */
  readonly rows: readonly string[];
  /** The same among the words of a label. */
  readonly printed: readonly MadeRow[];
}

const words = ["MACHINE WASH WARM", "WASH SEPARATELY", "TUMBLE DRY", "DO NOT BLEACH", "WARM IRON", "100% COTTON", "MADE IN U.S.A."];

/** A label that some month of the book's printed, of a listed kind and with a date on one of its rows. */
export function drawLabel(book: Book, axis: World["axis"], random: Random): DrawnLabel {
  for (;;) {
    try {
      const drawn = tryLabel(book, axis, random);
      if (drawn) return drawn;
    } catch (error) {
      if (!(error instanceof NothingToDraw)) throw error;
    }
  }
}

function tryLabel(book: Book, axis: World["axis"], random: Random): DrawnLabel | null {
  const {from, until} = coveredMonths(book, axis);
  const month = random.whole(from, until);
  const markets = Object.keys(book.markets);
  const code = (name: "plant" | "lot" | "fabric") => {
    const list = codesOf(book, name);
    return list && drawCode(list, month, random);
  };
  const market = markets[random.place(markets.map((id) => book.markets[id]!)) ?? -1] ?? null;
  const world: World = {book, axis, random, market, type: null, own: {plant: code("plant"), lot: code("lot"), fabric: code("fabric")}};
  const labels = book.labels!;
  const kind = drawValue(labels.kinds, labels.other, month, world);
  if (!(kind in labels.kinds) || labels.kinds[kind]!.rows.length === 0) return null;
  const drawn = drawRows({kind, month, world, eye: {doubtful: 0, unreadable: 0}, placed: false, own: true});
  if (!drawn.some(({truth}) => truth.date)) return null;
  const rows = drawn.map(({text}) => text);
  return {maker: book.book, kind, month, rows, printed: [{kind: "care", text: random.pick(words)}, ...rows.map((text): MadeRow => ({kind: "lot", text}))]};
}
