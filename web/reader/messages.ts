// What the page and the worker that reads photos say to each other.
import type {Book} from "../../engine/index.ts";
import type {Problem} from "../../engine/problem.ts";
import type {Quad, ReadingMap} from "../../reader/model.ts";
import type {ReadLabel} from "../../reader/read-label.ts";
import type {Turn} from "./outline.ts";

export interface ReadAsk {
  readonly id: number;
  /** Hash of the photo: the one that was read last is still unpacked. */
  readonly photo: string;
  readonly blob: Blob;
  /** null: the whole photo; left out: proposed. */
  readonly outline?: Quad | null;
  /** Left out: found out. */
  readonly turn?: Turn;
  readonly map?: ReadingMap;
  /** Books of the possible makers: what their labels can print is asked of the reader, too. */
  readonly makers: readonly Book[];
  /** Kind of the label, when known. */
  readonly label: string | null;
}

export type ReadTold =
  /** The reader is being fetched: bytes there, and of how many. */
  | {readonly id: number; readonly fetched: {readonly done: number; readonly of: number}}
  | {readonly id: number; readonly rows: {readonly done: number; readonly of: number}}
  /** `reading` is null when nothing can be read; the problems say why. */
  | {readonly id: number; readonly reading: ReadLabel | null; readonly problems: readonly Problem[]}
  /** There is no reader, for now or at all. */
  | {readonly id: number; readonly missing: Problem};
