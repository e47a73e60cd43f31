// The one interface behind which every recogniser stands: lines of a photo in, rows with doubt out.
import type {Quad, ReadRow} from "./model.ts";

/** An upright photo as plain bytes, row by row from its top left, as a canvas or a decoder gives them. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** 3: red, green, blue; 4: and how opaque, which is not looked at. */
  readonly channels: 3 | 4;
  /** width × height × channels bytes. */
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** A place where a line of print seems to stand. */
export interface FoundLine {
  readonly quad: Quad;
  /** How sure the finder is, 0 to 1. */
  readonly sure: number;
}

export interface LineOptions {
  /** Crops that are read and averaged: 1, more, or "doubt": more only where one leaves doubt. Default "doubt". */
  readonly looks?: number | "doubt";
}

/** A row that can still be asked about. It holds the recogniser's numbers for this row, a few hundred kilobytes at most; let go of it when done. */
export interface OpenRow {
  /** As the recogniser itself says, before any reading map. */
  readonly row: ReadRow;
  /**
   * Chance that exactly this text stands there, blanks told apart, before any reading map; over all texts the chances sum to 1.
   * 0 for a text with a character that the reader does not know.
   */
  score(text: string): number;
}

/** Something that reads labels. Every implementation passes test/reader/contract.ts. */
export interface LabelReader {
  /** Which reader, and its edition; kept with what it reads. */
  readonly name: string;
  /** Lines of print, from the top down; none when there is nothing like print. Turned lines get quads in reading order where the reader can tell. */
  findLines(image: Pixels): Promise<FoundLine[]>;
  /** Reads one line. A quad with no room in it, or outside the photo, gives a row with no reading and `none` 1. */
  readLine(image: Pixels, quad: Quad, options?: LineOptions): Promise<OpenRow>;
  /** Gives back memory; nothing may be asked afterwards. */
  close(): Promise<void>;
}

/** Thrown by `openReader` where there is no recogniser: its package or files are missing. `problem` says what to do. */
export {NoReader} from "./no-reader.ts";
