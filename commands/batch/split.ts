// Cuts a stream of bytes into records with their line numbers, never holding more than one piece of the stream and one record.

/** A run of whole records: record `i` is `bytes` from `ends[i - 1]` (0 for the first) to `ends[i]`, line break included. */
export interface Records {
  readonly bytes: Uint8Array;
  readonly ends: readonly number[];
  /** The line of the file on which each record begins, from 1. */
  readonly lines: readonly number[];
}

/** Bytes after which a line is no line any more, and a quoted cell was never closed. Source: own choice. */
export const longestRecord = 1 << 18;

const [lineFeed, carriageReturn, quote] = [10, 13, 34];
/** Where a record ends when that is not seen: more bytes are needed, or its quotes are not those of a table. */
const [more, broken] = [-1, -2];

/**
 * Cuts records at line breaks; in a table, line breaks inside quoted cells do not count (RFC 4180).
 *
 * A quote opens a cell only at its beginning, so that 34" in the middle of a cell is only a sign. A quoted cell that is never closed,
 * or that goes on after its closing quote, makes its first line a record of its own, and reading goes on with the next line.
 */
export class RecordSplitter {
  private held: Uint8Array = new Uint8Array(0);
  private line = 1;
  /** The rest of an endless line is dropped. */
  private dropping = false;
  private readonly delimiter: number | null;

  /** @param delimiter  code of the character between the cells of a table; null for one value a line */
  constructor(delimiter: number | null) {
    this.delimiter = delimiter;
  }

  /** Takes the next piece and gives the records that it completes. */
  push(piece: Uint8Array): Records {
    return this.cut(this.dropping ? this.dropped(piece) : joined(this.held, piece), false);
  }

  /** Gives what is left at the end of the stream. */
  end(): Records {
    return this.cut(this.held, true);
  }

  private cut(bytes: Uint8Array, last: boolean): Records {
    const ends: number[] = [];
    const lines: number[] = [];
    let start = 0;
    let quoteAt = -1;
    while (start < bytes.length) {
      const feed = bytes.indexOf(lineFeed, start);
      const firstLine = feed < 0 ? bytes.length : feed + 1;
      if (quoteAt < start) quoteAt = placeOf(quote, bytes, start);
      let end = this.delimiter !== null && quoteAt < firstLine ? endOfRecord(bytes, start, this.delimiter, last) : feed < 0 && !last ? more : firstLine;
      if (end === broken && feed < 0 && !last) end = more; // its first line is not whole yet
      if (end === more && bytes.length - start > longestRecord) end = broken;
      if (end === more) break;
      if (end === broken) {
        end = firstLine;
        this.dropping = feed < 0;
      }
      ends.push(end);
      lines.push(this.line);
      for (let at = feed; at >= 0 && at < end; at = bytes.indexOf(lineFeed, at + 1)) this.line++;
      start = end;
    }
    this.held = bytes.subarray(start);
    return {bytes: bytes.subarray(0, start), ends, lines};
  }

  private dropped(piece: Uint8Array): Uint8Array {
    const feed = piece.indexOf(lineFeed);
    if (feed < 0) return piece.subarray(piece.length);
    this.dropping = false;
    this.line++;
    return piece.subarray(feed + 1);
  }
}

function endOfRecord(bytes: Uint8Array, start: number, delimiter: number, last: boolean): number {
  let atCellStart = true;
  for (let i = start; i < bytes.length; ) {
    const sign = bytes[i];
    if (sign === lineFeed) return i + 1;
    if (sign === quote && atCellStart) {
      i = afterQuoted(bytes, i + 1);
      if (i < 0) return last ? broken : more;
      const next = bytes[i];
      if (next !== undefined && next !== delimiter && next !== lineFeed && next !== carriageReturn) return broken;
      atCellStart = false;
    } else {
      atCellStart = sign === delimiter;
      i++;
    }
  }
  return last ? bytes.length : more;
}

/** The place after the quote that closes a cell; -1 when none does. */
function afterQuoted(bytes: Uint8Array, from: number): number {
  for (let i = bytes.indexOf(quote, from); i >= 0; i = bytes.indexOf(quote, i + 2)) if (bytes[i + 1] !== quote) return i + 1;
  return -1;
}

function placeOf(sign: number, bytes: Uint8Array, from: number): number {
  const at = bytes.indexOf(sign, from);
  return at < 0 ? Infinity : at;
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  if (a.length === 0) return b;
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
