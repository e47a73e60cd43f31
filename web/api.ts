// Talks to the server: JSON in, JSON out, and what went wrong as problems that can be shown.
import type {Problem} from "../engine/problem.ts";

/** GET /api/about */
export interface About {
  readonly version: string;
  readonly garments: number;
  /** The rack holds only the demo. */
  readonly demo: boolean;
  /** No passphrase is needed, or it was given. */
  readonly open: boolean;
  readonly today: string;
}

/** An answer that is no success: RFC 9457 problem details, with the problems to show. */
export class ApiFault extends Error {
  readonly status: number;
  readonly problems: readonly Problem[];
  /** The whole body, for what a problem carries besides. */
  readonly body: unknown;

  constructor(status: number, problems: readonly Problem[], body: unknown) {
    super(problems.map(({what}) => what).join("; "));
    this.status = status;
    this.problems = problems;
    this.body = body;
  }
}

interface Ask {
  readonly signal?: AbortSignal;
}

/**
 * Fetches JSON.
 * @throws ApiFault when the server says no, whatever fetch throws when it cannot be reached; `problemsOf` puts both in words
 */
export async function getJson<T>(path: string, {signal}: Ask = {}): Promise<T> {
  return read<T>(await fetch(path, {headers: {accept: "application/json"}, ...(signal && {signal})}));
}

/** Sends JSON, and gives what comes back. */
export async function sendJson<T>(method: "POST" | "PUT" | "DELETE", path: string, body?: unknown, {signal}: Ask = {}): Promise<T> {
  return read<T>(await send(method, path, body, signal));
}

/** Sends a file as it is. */
export async function sendFile<T>(path: string, file: Blob, {signal}: Ask = {}): Promise<T> {
  return read<T>(await fetch(path, {method: "POST", headers: {...who(), "content-type": file.type || "application/octet-stream"}, body: file, ...(signal && {signal})}));
}

/** Sends JSON, and gives what comes back line by line as it comes. */
export async function* sendForLines<T>(path: string, body: unknown, {signal}: Ask = {}): AsyncGenerator<T> {
  const response = await send("POST", path, body, signal);
  if (!response.ok || !response.body) throw await faultOf(response);
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const {done, value} = await reader.read();
    rest += value ?? "";
    const lines = rest.split("\n");
    rest = done ? "" : lines.pop()!;
    for (const line of lines) if (line.trim() !== "") yield JSON.parse(line) as T;
    if (done) return;
  }
}

/** What went wrong, to be shown. */
export function problemsOf(error: unknown): readonly Problem[] {
  if (error instanceof ApiFault) return error.problems;
  return [{code: "screen/unreachable", at: "the server", what: "it cannot be reached", why: "it may have been stopped, or this device is out of its network", fix: "see that ticking is running, then try again; nothing typed here is lost"}];
}

/** Who makes a change, for the history. Headers carry plain letters only, so that other ones go percent-encoded. */
export const who = () => ({"x-ticking-who": encodeURIComponent(localStorage.getItem("ticking.who") ?? "owner")});

const send = (method: string, path: string, body: unknown, signal?: AbortSignal): Promise<Response> =>
  fetch(path, {method, headers: {...who(), "content-type": "application/json", accept: "application/json"}, ...(body !== undefined && {body: JSON.stringify(body)}), ...(signal && {signal})});

async function read<T>(response: Response): Promise<T> {
  if (!response.ok) throw await faultOf(response);
  return (response.status === 204 ? null : await response.json()) as T;
}

async function faultOf(response: Response): Promise<ApiFault> {
  const body: unknown = await response.json().catch(() => null);
  const told = typeof body === "object" && body !== null && "problems" in body && Array.isArray(body.problems) ? (body.problems as Problem[]) : [];
  const other: Problem = {code: "screen/refused", at: "the server", what: `it answered ${response.status}`, why: "so what was asked for was not done", fix: "try again; what the server prints says more"};
  return new ApiFault(response.status, told.length > 0 ? told : [other], body);
}
