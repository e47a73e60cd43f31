// Asks the engine's workers: one dates at once, the other works out the reasons, so that a date never waits for the reasons of the one before.
import {getJson} from "../api.ts";
import type {Book, Garment} from "../../engine/index.ts";
import type {Ask, Depth, Told} from "./messages.ts";

type Listener = (told: Told) => void;

export interface Engine {
  readonly books: readonly Book[];
  /**
   * Asks for the date or for the whole finding of a garment, or for the date without one mark.
   * An older question of the same kind that was not begun yet is dropped.
   */
  ask(kind: string, question: {readonly garment: Garment; readonly depth: Depth; readonly without?: string}, onTold: Listener): void;
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
  const now = new Date();
  const first: Ask = {books: JSON.stringify(books), today: `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}`};
  const desks: Readonly<Record<Depth, Desk>> = {date: openDesk(first), whole: openDesk(first)};
  return {books, ask: (kind, {garment, depth, without = null}, onTold) => desks[depth].ask(kind, {garment, depth, without}, onTold)};
}

type Question = {readonly garment: Garment; readonly depth: Depth; readonly without: string | null};

interface Desk {
  ask(kind: string, question: Question, onTold: Listener): void;
}

/** A worker with the questions that wait for it, one of a kind. */
function openDesk(first: Ask): Desk {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), {type: "module"});
  worker.postMessage(first);
  const waiting = new Map<string, {question: Question; onTold: Listener}>();
  let busy: {id: number; onTold: Listener} | null = null;
  let last = 0;
  const next = () => {
    const [first] = waiting;
    if (!first) return;
    const [kind, {question, onTold}] = first;
    waiting.delete(kind);
    busy = {id: ++last, onTold};
    worker.postMessage({id: last, ...question} satisfies Ask);
  };
  worker.onmessage = ({data}: MessageEvent<Told>) => {
    if (!busy || data.id !== busy.id) return;
    const {onTold} = busy;
    busy = null;
    next();
    onTold(data);
  };
  return {
    ask(kind, question, onTold) {
      waiting.set(kind, {question, onTold});
      if (!busy) next();
    },
  };
}
