// One of the owner's settings: read once, and saved on top of what was read.
import {useCallback, useEffect, useState} from "react";
import type {Problem} from "../../../engine/problem.ts";
import {ApiFault, getJson, problemsOf, sendJson} from "../../api.ts";

interface Shown<T> {
  readonly rev: number;
  readonly value: T;
}

export interface OpenSetting<T> {
  /** Null until it has come. */
  readonly value: T | null;
  readonly problems: readonly Problem[];
  /** Grows with each save. */
  readonly rev: number;
  /** Whether it was saved; when somebody saved it in between, theirs is shown and told. */
  readonly save: (value: T) => Promise<boolean>;
  /** Saves again what stood there before the last save; null when nothing was saved here. */
  readonly undo: (() => Promise<boolean>) | null;
}

export function useSetting<T>(name: string): OpenSetting<T> {
  const [shown, setShown] = useState<Shown<T> | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    const stop = new AbortController();
    getJson<Shown<T>>(`/api/settings/${name}`, {signal: stop.signal}).then(setShown, (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)));
    return () => stop.abort();
  }, [name]);
  const [before, setBefore] = useState<T | null>(null);
  const base = shown?.rev ?? 0;
  const was = shown?.value ?? null;
  const save = useCallback(
    async (value: T) => {
      try {
        setShown(await sendJson<Shown<T>>("PUT", `/api/settings/${name}`, {base, value}));
        setBefore(() => was);
        setProblems([]);
        return true;
      } catch (error) {
        if (error instanceof ApiFault && error.status === 409) setShown((error.body as {now: Shown<T>}).now);
        setProblems(problemsOf(error));
        return false;
      }
    },
    [name, base, was],
  );
  const undo = useCallback(async () => {
    const back = await save(before!);
    if (back) setBefore(null);
    return back;
  }, [save, before]);
  return {value: shown?.value ?? null, rev: base, problems, save, undo: before === null ? null : undo};
}
