// The worth of a lot, asked again when something in it changes.
import {useEffect, useState} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {LotAnswer} from "../../../worth/answer.ts";
import {problemsOf, sendJson} from "../../api.ts";

const patience = 300;

export interface LotQuestion {
  readonly ids: readonly string[];
  readonly unexamined: number;
  readonly sampled: readonly string[];
  readonly asked?: number;
}

/** @param turn  grows when the terms change */
export function useLotAnswer(question: LotQuestion | null, turn: number) {
  const key = question && question.ids.length > 0 ? JSON.stringify({...question, turn}) : "";
  const [held, setHeld] = useState<{readonly key: string; readonly answer: LotAnswer | null}>({key: "", answer: null});
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    if (key === "") {
      setHeld({key, answer: null});
      setProblems([]);
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(() => {
      sendJson<LotAnswer>("POST", "/api/worth/lot", question, {signal: stop.signal}).then(
        (answer) => {
          setHeld({key, answer});
          setProblems([]);
        },
        (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)),
      );
    }, patience);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
    // The key says all of the question.
  }, [key]);
  return {answer: held.answer, stale: held.key !== key, problems};
}
