// The input of a batch: its first line decides what it is; after that it comes in runs of whole records.
import {isUtf8} from "node:buffer";
import {createReadStream, statSync} from "node:fs";
import {delimiterOf} from "../../commands/batch/columns.ts";
import * as say from "../../commands/batch/problems.ts";
import {longestRecord, RecordSplitter, type Records} from "../../commands/batch/split.ts";
import {NeedsMending} from "../ending.ts";
import {notFound, notOpened} from "../problems.ts";

/** Bytes of one piece of the stream. */
const pieceSize = 1 << 16;

export interface Source {
  /** The line of column names; null for a list of JSON. */
  readonly header: {readonly text: string; readonly line: number; readonly breakLine: "\n" | "\r\n"} | null;
  /** What follows, in runs of whole records. */
  readonly records: AsyncGenerator<Records>;
  /** Bytes of the whole input; null when unknown. */
  readonly size: number | null;
  /** Bytes taken so far. */
  readonly taken: () => number;
}

/**
 * Opens a file or stdin.
 * @param name  for the heads of problems
 */
export async function openSource(path: string, name: string): Promise<Source> {
  const size = path === "-" ? null : sizeOf(path, name);
  const stream: AsyncIterable<Uint8Array> = path === "-" ? process.stdin : createReadStream(path, {highWaterMark: pieceSize});
  let taken = 0;
  const pieces = counted(stream, name, (bytes) => (taken += bytes));
  const start = await startOf(pieces);
  const firstLine = Buffer.from(firstLineOf(start)).toString("utf8").trim();
  const isList = firstLine.startsWith("{");
  checkText(start, firstLine, name);
  const records = recordsOf(start, pieces, new RecordSplitter(isList ? null : delimiterOf(firstLine).charCodeAt(0)));
  const whole = {records, size, taken: () => taken};
  return isList ? {...whole, header: null} : withHeader(whole, name);
}

function sizeOf(path: string, name: string): number {
  const stat = statSync(path, {throwIfNoEntry: false});
  if (!stat) throw new NeedsMending([notFound(name)]);
  if (stat.isDirectory()) throw new NeedsMending([notOpened(name, "it is a folder")]);
  return stat.size;
}

async function* counted(stream: AsyncIterable<Uint8Array>, name: string, count: (bytes: number) => void): AsyncGenerator<Uint8Array> {
  try {
    for await (const piece of stream) {
      count(piece.length);
      yield piece;
    }
  } catch (error) {
    throw new NeedsMending([notOpened(name, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  }
}

/** The first pieces, up to the first line that is not empty; without a byte order mark. */
async function startOf(pieces: AsyncGenerator<Uint8Array>): Promise<Uint8Array> {
  let start: Uint8Array = new Uint8Array(0);
  for (;;) {
    const text = Buffer.from(start).toString("latin1").trimStart();
    if (text.includes("\n") || start.length > longestRecord) break;
    const {done, value} = await pieces.next();
    if (done) break;
    start = Buffer.concat([start, value]);
  }
  return start[0] === 0xef && start[1] === 0xbb && start[2] === 0xbf ? start.subarray(3) : start;
}

function firstLineOf(start: Uint8Array): Uint8Array {
  let from = 0;
  while (from < start.length && (start[from] === 10 || start[from] === 13 || start[from] === 32 || start[from] === 9)) from++;
  const end = start.indexOf(10, from);
  return start.subarray(from, end < 0 ? start.length : end);
}

function checkText(start: Uint8Array, firstLine: string, name: string): void {
  const line = firstLineOf(start);
  const wide = (start[0] === 0xff && start[1] === 0xfe) || (start[0] === 0xfe && start[1] === 0xff);
  if (wide) throw new NeedsMending([say.notText(name, "the file is UTF-16 text, not UTF-8")]);
  if (line.includes(0)) throw new NeedsMending([say.notText(name, "the file is not text")]);
  if (!isUtf8(line)) throw new NeedsMending([say.notText(`${name}:1`, "the line is not UTF-8 text")]);
  if (firstLine === "") throw new NeedsMending([say.empty(name)]);
  if (firstLine.startsWith("[")) throw new NeedsMending([say.jsonList(name)]);
}

async function* recordsOf(start: Uint8Array, pieces: AsyncGenerator<Uint8Array>, splitter: RecordSplitter): AsyncGenerator<Records> {
  yield splitter.push(start);
  for await (const piece of pieces) yield splitter.push(piece);
  yield splitter.end();
}

// Takes runs by hand: a loop left early would close the generator, and with it the rest of the table.
async function withHeader(source: Omit<Source, "header">, name: string): Promise<Source> {
  for (let run = await source.records.next(); !run.done; run = await source.records.next()) {
    const first = run.value;
    for (let i = 0; i < first.ends.length; i++) {
      const text = Buffer.from(first.bytes.subarray(i === 0 ? 0 : first.ends[i - 1], first.ends[i])).toString("utf8");
      if (text.trim() === "") continue;
      const header = {text: text.replace(/\r?\n$/, ""), line: first.lines[i]!, breakLine: text.endsWith("\r\n") ? "\r\n" as const : "\n" as const};
      return {...source, header, records: after(rest(first, i + 1), source.records)};
    }
  }
  throw new NeedsMending([say.empty(name)]);
}

/** Records from a place on. */
function rest({bytes, ends, lines}: Records, from: number): Records {
  const skipped = ends[from - 1]!;
  return {bytes: bytes.subarray(skipped), ends: ends.slice(from).map((end) => end - skipped), lines: lines.slice(from)};
}

async function* after(first: Records, others: AsyncGenerator<Records>): AsyncGenerator<Records> {
  yield first;
  yield* others;
}

/** Cuts a run of records into shares of at most so many, each with memory of its own, so that it can be handed to a worker. */
export function* sharesOf({bytes, ends, lines}: Records, most: number): Generator<Records> {
  for (let from = 0; from < ends.length; from += most) {
    const start = from === 0 ? 0 : ends[from - 1]!;
    const share = ends.slice(from, from + most);
    yield {bytes: new Uint8Array(bytes.subarray(start, share.at(-1))), ends: share.map((end) => end - start), lines: lines.slice(from, from + most)};
  }
}
