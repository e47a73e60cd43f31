// A text of the server by its address, fetched anew when the address changes; the old one stands until then.
import {useEffect, useState} from "react";
import type {Problem} from "../../engine/problem.ts";
import {ApiFault, problemsOf, who} from "../api.ts";

export interface Fetched {
  readonly text: string | null;
  /** Another one is on its way. */
  readonly stale: boolean;
  readonly problems: readonly Problem[];
}

/** @param body  what is posted, as JSON; null: the text is only fetched */
export function useText(address: string, body: string | null = null): Fetched {
  const [held, setHeld] = useState<Fetched & {readonly key: string}>({text: null, stale: true, problems: [], key: ""});
  const key = `${address} ${body ?? ""}`;
  useEffect(() => {
    const asked = new AbortController();
    const settle = (next: Partial<Fetched>) => asked.signal.aborted || setHeld((now) => ({text: now.text, problems: [], ...next, stale: false, key}));
    fetchText(address, body, asked.signal).then((text) => settle({text}), (error: unknown) => settle({problems: problemsOf(error)}));
    return () => asked.abort();
  }, [address, body, key]);
  return held.key === key ? held : {...held, stale: true};
}

async function fetchText(address: string, body: string | null, signal: AbortSignal): Promise<string> {
  const response = await fetch(address, body === null ? {signal} : {signal, method: "POST", headers: {...who(), "content-type": "application/json"}, body});
  if (response.ok) return response.text();
  const given = (await response.json().catch(() => null)) as {problems?: readonly Problem[]} | null;
  throw new ApiFault(response.status, given?.problems ?? [], given);
}
