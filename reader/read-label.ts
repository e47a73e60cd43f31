// A photo to the rows of its label with honest doubt, or advice when nothing can be read.
import type {Problem} from "../engine/problem.ts";
import type {LabelReading, Quad, ReadingMap} from "./model.ts";
import type {LabelReader, Pixels} from "./reader.ts";

export interface LabelOptions {
  /** The label in the photo; null: the whole photo; left out: proposed from the lines found. */
  readonly outline?: Quad | null;
  /** Degrees clockwise that make the label upright; left out: found out. */
  readonly turn?: LabelReading["turn"];
  /** Left out: the fitted map that is shipped. */
  readonly map?: ReadingMap;
  /** Told before each row: how many rows are read, and of how many. */
  readonly onRow?: (done: number, of: number) => void;
}

/** A label reading, but for the photo's hash, which the reader does not know. */
export type ReadLabel = Omit<LabelReading, "photo">;

export interface LabelAnswer {
  /** null when nothing can be read; `problems` then says why and what to do. */
  readonly reading: ReadLabel | null;
  /** One a row, in the order of the rows: chance of exactly this text, as OpenRow.score. */
  readonly scores: readonly ((text: string) => number)[];
  /** Why nothing can be read, or advice for a better photo beside what could be. */
  readonly problems: readonly Problem[];
}
