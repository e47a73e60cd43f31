// What is being typed on a sheet, kept on this device until it is saved or thrown away: a reload or a crash loses none of it.
import {useCallback, useState} from "react";

interface Kept<T> {
  readonly rev: number;
  readonly value: T;
}

export interface Draft<T> {
  readonly value: T;
  /** Something was typed. */
  readonly touched: boolean;
  readonly set: (change: Partial<T>) => void;
  /** Saved, or thrown away. */
  readonly drop: () => void;
}

/**
 * @param key    what is being typed on
 * @param rev    its revision: a draft of an older one is none
 * @param begin  what stands there before anything is typed
 */
export function useDraft<T extends object>(key: string, rev: number, begin: () => T): Draft<T> {
  const [draft, setDraft] = useState<{readonly value: T; readonly touched: boolean}>(() => {
    const kept = localStorage.getItem(key);
    const read = kept === null ? null : (JSON.parse(kept) as Kept<T>);
    return read?.rev === rev ? {value: {...begin(), ...read.value}, touched: true} : {value: begin(), touched: false};
  });
  const set = useCallback(
    (change: Partial<T>) =>
      setDraft(({value: was}) => {
        const value = {...was, ...change};
        localStorage.setItem(key, JSON.stringify({rev, value} satisfies Kept<T>));
        return {value, touched: true};
      }),
    [key, rev],
  );
  return {...draft, set, drop: useCallback(() => localStorage.removeItem(key), [key])};
}
