// Dates garments that hang undated, a few at a time, in the background: the demo of a fresh rack, imports, and what an interrupted run left behind.
import {dateUndated} from "../commands/rack/date-undated.ts";
import type {Rack} from "../commands/rack/rack.ts";

export interface Background {
  /** Takes garments into the queue and returns at once. */
  add(ids: readonly string[]): void;
  /** Resolves when the queue is empty. */
  settled(): Promise<void>;
  /** Begins nothing more, and resolves when nothing is under way; what is left is found again at the next start. */
  stop(): Promise<void>;
}

const perTurn = 20;

/** @param onFault  told when dating fails for a reason of ours; the rest of the queue goes on */
export function makeBackground(rack: () => Promise<Rack>, onFault: (error: unknown) => void): Background {
  const queue: string[] = [];
  let turn: Promise<void> = Promise.resolve();
  let busy = false;
  let stopped = false;
  const work = async () => {
    while (queue.length > 0) {
      try {
        await dateUndated(queue.splice(0, perTurn), await rack());
      } catch (error) {
        // Those who date may end while they are at it.
        if (!stopped) onFault(error);
      }
    }
    busy = false;
  };
  return {
    add(ids) {
      if (stopped) return;
      for (const id of ids) queue.push(id);
      if (busy || queue.length === 0) return;
      busy = true;
      turn = work();
    },
    settled: () => turn,
    async stop() {
      stopped = true;
      queue.length = 0;
      await turn;
    },
  };
}
