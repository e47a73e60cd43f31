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
  /** Whether it was saved; when somebody saved it in between, theirs is shown and told. */
  readonly save: (value: T) => Promise<boolean>;
}

export function useSetting<T>(name: string): OpenSetting<T> {
  const [shown, setShown] = useState<Shown<T> | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    const stop = new AbortController();
    getJson<Shown<T>>(`/api/settings/${name}`, {signal: stop.signal}).then(setShown, (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)));
    return () => stop.abort();
  }, [name]);
  const base = shown?.rev ?? 0;
  const save = useCallback(
    async (value: T) => {
      try {
        setShown(await sendJson<Shown<T>>("PUT", `/api/settings/${name}`, {base, value}));
        setProblems([]);
        return true;
      } catch (error) {
        if (error instanceof ApiFault && error.status === 409) setShown((error.body as {now: Shown<T>}).now);
        setProblems(problemsOf(error));
        return false;
      }
    },
    [name, base],
  );
  return {value: shown?.value ?? null, problems, save};
}
