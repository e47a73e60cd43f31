// The worth of a garment, asked again when the asked price or the terms change.
import {useCallback, useEffect, useState} from "react";
import type {Problem} from "../../engine/problem.ts";
import type {GarmentRecord} from "../../store/model.ts";
import type {WorthAnswer} from "../../worth/answer.ts";
import {getJson, problemsOf, sendJson} from "../api.ts";

const patience = 250;

export interface OpenWorth {
  readonly record: GarmentRecord | null;
  readonly answer: WorthAnswer | null;
  /** The answer shown still answers an earlier question. */
  readonly stale: boolean;
  readonly problems: readonly Problem[];
  readonly setRecord: (record: GarmentRecord) => void;
  /** Asks anew, after something was changed. */
  readonly again: () => void;
}

/** @param asked  in the smallest unit of the shop's currency; null: nothing is asked */
export function useWorth(id: string, asked: number | null): OpenWorth {
  const [record, setRecord] = useState<GarmentRecord | null>(null);
  const [held, setHeld] = useState<{readonly key: string; readonly answer: WorthAnswer} | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [turn, setTurn] = useState(0);
  const key = `${id} ${asked ?? ""} ${turn} ${record?.rev ?? ""}`;

  useEffect(() => {
    const stop = new AbortController();
    getJson<GarmentRecord>(`/api/garments/${id}`, {signal: stop.signal}).then(setRecord, (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)));
    return () => stop.abort();
  }, [id]);

  useEffect(() => {
    if (!record) return;
    const stop = new AbortController();
    const ask = () =>
      sendJson<WorthAnswer>("POST", "/api/worth", {id, ...(asked === null ? {} : {asked})}, {signal: stop.signal}).then(
        (answer) => {
          setHeld({key, answer});
          setProblems([]);
        },
        (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)),
      );
    // Not with every figure that is typed.
    const timer = setTimeout(() => void ask(), held === null ? 0 : patience);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
    // The key says all of the question.
  }, [key]);

  return {record, answer: held?.answer ?? null, stale: held !== null && held.key !== key, problems, setRecord, again: useCallback(() => setTurn((one) => one + 1), [])};
}
