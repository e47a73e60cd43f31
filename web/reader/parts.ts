// Fetches what reading photos needs, once, telling how far it is; later it comes from this device.
import type {Problem} from "../../engine/problem.ts";

/** The parts as scripts/ship-reader.mjs lists them. */
const names = ["arithmetic", "finder", "reader", "keys"] as const;

export type Parts = Readonly<Record<(typeof names)[number], Uint8Array<ArrayBuffer>>>;

type List = Partial<Record<string, {readonly path: string; readonly bytes: number}>>;

/** Thrown when a part cannot be had; `problem` says what to do. */
export class PartsMissing extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.what);
    this.problem = problem;
  }
}

/**
 * All parts in memory.
 * @param onProgress  bytes there, and of how many
 * @throws PartsMissing when the server has none of them, or cannot be reached and this device has not kept them
 */
export async function fetchParts(onProgress: (done: number, of: number) => void): Promise<Parts> {
  const list = await listOfParts();
  const absent = names.filter((name) => !list[name]);
  if (absent.length > 0) throw new PartsMissing(notShipped(absent));
  const of = names.reduce((sum, name) => sum + list[name]!.bytes, 0);
  let done = 0;
  const parts = names.map(async (name) => [name, await bytesOf(list[name]!, (more) => onProgress((done += more), of))] as const);
  return Object.fromEntries(await Promise.all(parts)) as unknown as Parts;
}

async function listOfParts(): Promise<List> {
  const response = await fetch("/reader/parts.json").catch(() => null);
  if (!response) throw new PartsMissing(outOfReach);
  if (!response.ok) throw new PartsMissing(notShipped(names));
  return (await response.json()) as List;
}

async function bytesOf({path, bytes}: {readonly path: string; readonly bytes: number}, onMore: (more: number) => void): Promise<Uint8Array<ArrayBuffer>> {
  const response = await fetch(path).catch(() => null);
  if (!response) throw new PartsMissing(outOfReach);
  if (!response.ok || !response.body) throw new PartsMissing(notShipped([path]));
  const whole = new Uint8Array(bytes);
  let at = 0;
  for (const reader = response.body.getReader(); ; ) {
    const {done, value} = await reader.read();
    if (done) break;
    if (at + value.length > bytes) throw new PartsMissing(notShipped([path]));
    whole.set(value, at);
    at += value.length;
    onMore(value.length);
  }
  if (at < bytes) throw new PartsMissing(outOfReach);
  return whole;
}

const byTyping = "the rows can be typed as ever";

const notShipped = (absent: readonly string[]): Problem => ({
  code: "screen/reader-not-here", at: "reading from a photo", what: "this ticking was built without the reader of photos", why: `${absent.join(", ")} ${absent.length === 1 ? "is" : "are"} missing; ${byTyping}`,
  fix: "the one who runs it gets the reader with npm ci and a start anew",
});

const outOfReach: Problem = {
  code: "screen/reader-out-of-reach", at: "reading from a photo", what: "the reader of photos is not on this device yet, and the server cannot be reached", why: `it is fetched once, when a photo is first read; ${byTyping}`,
  fix: "try again when the server can be reached",
};
