// Sends one change of a garment to the server, and tells a server that cannot be reached from one that says no.
import type {Problem} from "../../engine/problem.ts";
import type {Content, GarmentRecord} from "../../store/model.ts";
import {who} from "../api.ts";
import {isDraftName, type Conflict, type GarmentChange} from "./kept.ts";
import {same} from "./merge.ts";
import {sendPhotosOf} from "./waiting-photos.ts";

export type Sent =
  | {readonly saved: GarmentRecord; readonly conflict?: undefined; readonly problems?: undefined; readonly unreachable?: undefined}
  | {readonly conflict: Conflict; readonly saved?: undefined; readonly problems?: undefined; readonly unreachable?: undefined}
  | {readonly problems: readonly Problem[]; readonly saved?: undefined; readonly conflict?: undefined; readonly unreachable?: undefined}
  /** `unanswered`: it may have arrived all the same. */
  | {readonly unreachable: true; readonly unanswered: boolean; readonly saved?: undefined; readonly conflict?: undefined; readonly problems?: undefined};

/**
 * Sends a change.
 * @param again  it was sent before without an answer: a new garment is first looked for on the rack
 */
export async function send(change: GarmentChange, again: boolean): Promise<Sent> {
  const fresh = isDraftName(change.garment);
  try {
    const there = fresh && again ? await findSame(change.content) : null;
    if (there) return {saved: there};
    const refused = await sendPhotosOf(change.content).catch(() => null);
    if (refused === null) return {unreachable: true, unanswered: false};
    if (refused.length > 0) return {problems: refused};
    const response = fresh
      ? await ask("POST", "/api/garments", {content: change.content})
      : await ask("PUT", `/api/garments/${change.garment}`, {base: change.base, content: change.content, what: change.what});
    if (isAbsent(response)) return {unreachable: true, unanswered: false};
    const body = (await response.json()) as unknown;
    if (response.ok) return {saved: body as GarmentRecord};
    if (response.status === 409 && isConflict(body)) {
      const {now} = body;
      const base = body.base ?? change.was;
      if (sameButDated(now.content, change.content)) return {saved: now};
      // The tool itself dates what hangs undated; that is nobody's change, and each save is dated anew anyway.
      if (now.rev > change.base && base !== null && sameButDated(base, now.content)) return send({...change, base: now.rev, was: now.content}, again);
      return {conflict: {now, base}};
    }
    return {problems: problemsIn(body, response.status)};
  } catch {
    return {unreachable: true, unanswered: true};
  }
}

const ask = (method: string, path: string, body: unknown): Promise<Response> =>
  fetch(path, {method, headers: {...who(), "content-type": "application/json"}, body: JSON.stringify(body)});

// A proxy without its server, and a passphrase that must be given again, both mean: later.
const isAbsent = ({status}: Response) => status === 401 || status === 429 || status === 502 || status === 503 || status === 504;

// The rack dates what it saves.
const sameButDated = (a: Content, b: Content) => same({...a, dating: null}, {...b, dating: null});

const isConflict = (body: unknown): body is {now: GarmentRecord; base: Content | null} => typeof body === "object" && body !== null && "now" in body;

function problemsIn(body: unknown, status: number): readonly Problem[] {
  if (typeof body === "object" && body !== null && "problems" in body && Array.isArray(body.problems)) return body.problems as Problem[];
  return [{code: "save/refused", at: "the garment", what: `the server answered ${status}`, why: "so nothing was saved", fix: "try again, or look at what the server prints"}];
}

async function findSame(content: Content): Promise<GarmentRecord | null> {
  const page = await fetch(`/api/rack?text=${encodeURIComponent(content.garment.garment)}&limit=20`);
  if (!page.ok) return null;
  const {rows} = (await page.json()) as {rows: {id: string; number: string}[]};
  for (const {id} of rows.filter(({number}) => number === content.garment.garment)) {
    const record = (await (await fetch(`/api/garments/${id}`)).json()) as GarmentRecord;
    if (sameButDated(record.content, content)) return record;
  }
  return null;
}
