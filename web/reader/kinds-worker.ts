// Weighs which kind of label it is, beside the page: one examination for each kind that a possible maker used.
import {suggestKinds, type KindOdds} from "../../commands/reading/suggest-kinds.ts";
import {makeWorld, type World} from "../../commands/world.ts";
import {parseMonth, type Book, type Garment, type RowText} from "../../engine/index.ts";

export interface KindsAsk {
  /** With the first ask, and when they have changed. */
  readonly books?: string;
  readonly today: string;
  readonly id: number;
  readonly garment: Garment;
  readonly rows: readonly RowText[];
  readonly makers: readonly string[];
}

export interface KindsTold {
  readonly id: number;
  readonly kinds: readonly KindOdds[];
}

let world: World | null = null;

self.onmessage = ({data: {books, today, id, garment, rows, makers}}: MessageEvent<KindsAsk>) => {
  if (books !== undefined) world = makeWorld(JSON.parse(books) as Book[], parseMonth(today)!);
  self.postMessage({id, kinds: suggestKinds(rows, world!, {makers, garment})} satisfies KindsTold);
};
