// Asks the worker that reads photos; it starts with the first photo, and gives its memory back when none was read for a while.
import type {Problem} from "../../engine/problem.ts";
import type {ReadAsk, ReadTold} from "./messages.ts";

type Listener = (told: ReadTold) => void;

/** Its memory is a few hundred megabytes. */
const idleMs = 180_000;

let worker: Worker | null = null;
let idle: ReturnType<typeof setTimeout> | undefined;
let lastId = 0;
let asked: {id: number; onTold: Listener} | null = null;

/**
 * Has a photo read.
 * @param onTold  told of what is fetched, of row after row, and of the end; never again once another photo is asked for
 * @returns stops it: the reader is begun anew with the next photo
 */
export function readPhoto(ask: Omit<ReadAsk, "id">, onTold: Listener): () => void {
  clearTimeout(idle);
  worker ??= start();
  const id = ++lastId;
  asked = {id, onTold};
  worker.postMessage({...ask, id} satisfies ReadAsk);
  return () => {
    if (asked?.id === id) stop();
  };
}

function start(): Worker {
  const started = new Worker(new URL("./reader-worker.ts", import.meta.url), {type: "module"});
  started.onmessage = ({data}: MessageEvent<ReadTold>) => {
    if (asked?.id !== data.id) return;
    const {onTold} = asked;
    if ("reading" in data || "missing" in data) rest();
    onTold(data);
  };
  // Out of memory, or its script could not be loaded.
  started.onerror = (event) => {
    event.preventDefault();
    const was = asked;
    stop();
    was?.onTold({id: was.id, missing: broken});
  };
  return started;
}

function rest(): void {
  asked = null;
  idle = setTimeout(stop, idleMs);
}

function stop(): void {
  clearTimeout(idle);
  worker?.terminate();
  worker = null;
  asked = null;
}

const broken: Problem = {code: "screen/reader-does-not-run", at: "reading from a photo", what: "the reader does not run in this browser", why: "it may be out of memory, or too old; the rows can be typed as ever", fix: "close other pages and try again, or use a smaller photo"};
