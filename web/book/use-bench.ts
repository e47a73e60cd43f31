// Has the text of a book checked and the example dated a moment after the last key.
import {useEffect, useRef, useState} from "react";
import type {BenchAnswer, BenchQuestion} from "./bench-shape.ts";

const patience = 150;

/** @returns the answer to the latest text, and whether a newer one is on its way */
export function useBench(question: Omit<BenchQuestion, "turn">): {readonly answer: BenchAnswer | null; readonly busy: boolean} {
  const {yaml, others, example, today} = question;
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const [answer, setAnswer] = useState<BenchAnswer | null>(null);
  const [busy, setBusy] = useState(true);

  useEffect(() => {
    const made = new Worker(new URL("./bench-worker.ts", import.meta.url), {type: "module"});
    made.addEventListener("message", ({data}: MessageEvent<BenchAnswer>) => {
      if (data.turn !== turn.current) return;
      setAnswer(data);
      setBusy(false);
    });
    worker.current = made;
    return () => made.terminate();
  }, []);

  useEffect(() => {
    setBusy(true);
    const timer = setTimeout(() => worker.current?.postMessage({turn: ++turn.current, yaml, others, example, today} satisfies BenchQuestion), patience);
    return () => clearTimeout(timer);
  }, [yaml, others, example, today]);

  return {answer, busy};
}
