// Asks the engine's worker; of several questions that wait, only the newest of a kind is asked.
import {getJson} from "../api.ts";
import type {Book, Garment} from "../../engine/index.ts";
import type {Ask, Told} from "./messages.ts";

type Listener = (told: Told) => void;

export interface Engine {
  readonly books: readonly Book[];
  /** Asks; an older question of the same kind that was not begun yet is dropped. */
  ask(kind: string, garment: Garment, without: string | null, onTold: Listener): void;
}

let started: Promise<Engine> | null = null;

/** The one engine of the page; the books are fetched with the first call. */
export function engine(): Promise<Engine> {
  return (started ??= start().catch((error: unknown) => {
    started = null;
    throw error;
  }));
}

/** Has the books fetched again with the next call: they were changed. */
export function forgetEngine(): void {
  started = null;
}

async function start(): Promise<Engine> {
  const books = await getJson<readonly Book[]>("/api/books/used");
  const worker = new Worker(new URL("./worker.ts", import.meta.url), {type: "module"});
  const now = new Date();
  worker.postMessage({books: JSON.stringify(books), today: `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}`} satisfies Ask);
  const waiting = new Map<string, {garment: Garment; without: string | null; onTold: Listener}>();
  let busy: {id: number; onTold: Listener; whole: boolean} | null = null;
  let last = 0;
  const next = () => {
    const [first] = waiting;
    if (!first) return;
    const [kind, {garment, without, onTold}] = first;
    waiting.delete(kind);
    busy = {id: ++last, onTold, whole: without === null};
    worker.postMessage({id: last, garment, without} satisfies Ask);
  };
  worker.onmessage = ({data}: MessageEvent<Told>) => {
    if (!busy || data.id !== busy.id) return;
    busy.onTold(data);
    if ("brief" in data && busy.whole) return;
    busy = null;
    next();
  };
  return {
    books,
    ask(kind, garment, without, onTold) {
      waiting.set(kind, {garment, without, onTold});
      if (!busy) next();
    },
  };
}
