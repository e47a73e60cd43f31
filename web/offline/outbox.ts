// Saves: each goes to the server at once, or waits on this device until the server can be reached, and then goes in order.
import type {Problem} from "../../engine/problem.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {database} from "./database.ts";
import {draftOf, dropDraft} from "./draft.ts";
import {isDraftName, newDraftName, type Conflict, type GarmentChange, type Waiting} from "./kept.ts";
import {mergeContent, same} from "./merge.ts";
import {send, type Sent} from "./send.ts";

/** What became of a change: saved, kept until the server is back, in conflict with a newer save, or refused. */
export type Kept =
  | {readonly saved: GarmentRecord; readonly waiting?: undefined; readonly conflict?: undefined; readonly problems?: undefined}
  | {readonly waiting: true; readonly saved?: undefined; readonly conflict?: undefined; readonly problems?: undefined}
  | {readonly conflict: Conflict; readonly saved?: undefined; readonly waiting?: undefined; readonly problems?: undefined}
  | {readonly problems: readonly Problem[]; readonly saved?: undefined; readonly waiting?: undefined; readonly conflict?: undefined};

/** Told when a waiting change reached the rack, or cannot as it is; null when only the list of what waits has changed. */
export type OutboxNews = {readonly garment: string; readonly kept: Exclude<Kept, {waiting: true}>} | null;

const listeners = new Set<(news: OutboxNews) => void>();
// Other windows learn that the list has changed; what became of a change concerns the window that made it.
const others = new BroadcastChannel("ticking outbox");
others.addEventListener("message", () => listeners.forEach((listener) => listener(null)));

/** Watches the outbox; returns the function that stops it. */
export function watchOutbox(listener: (news: OutboxNews) => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/**
 * Saves a change, or keeps it until it can be saved.
 * A change of a garment of which one already waits takes its place; when that one was made in another window, both are put together.
 * @returns never throws for a missing server; a conflict or a problem is told, and the caller's draft holds what was typed
 */
export async function keepGarment(given: GarmentChange): Promise<Kept> {
  const change = {...given, garment: hungAs(given.garment) ?? given.garment};
  // A browser that keeps nothing (a private window, a full disk) still saves while the server is there.
  const earlier = (await waitingChanges().catch(() => [])).find(({garment}) => garment === change.garment);
  if (!earlier) {
    const sent = await send(change, false);
    if (!sent.unreachable) {
      if (sent.saved) noteHung(change.garment, sent.saved.id);
      return sent;
    }
    return put({...change, at: new Date().toISOString(), by: thisWindow(), unanswered: sent.unanswered, trouble: null}).then(() => ({waiting: true}), () => ({problems: [keptNowhere]}));
  }
  const content = earlier.by === thisWindow() ? change.content : mergeContent(earlier.was, change.content, earlier.content).content;
  // One in trouble goes on top of what its owner has seen since.
  const {base, was} = earlier.trouble ? change : earlier;
  await put({...earlier, content, base, was, by: thisWindow(), trouble: null});
  let outcome: Kept = {waiting: true};
  const stop = watchOutbox((news) => {
    if (news?.garment === change.garment) outcome = news.kept;
  });
  await sendWaiting();
  stop();
  return outcome;
}

const keptNowhere: Problem = {code: "save/kept-nowhere", at: "the garment", what: "the server cannot be reached, and this browser keeps nothing", why: "so what was typed stands in this page only", fix: "leave the page open until the server is back, then change something once more"};

/** What waits on this device, the oldest first. */
export async function waitingChanges(): Promise<readonly Waiting[]> {
  return (await database()).getAll("waiting");
}

/**
 * Sends what waits, in order, until the server cannot be reached. One window at a time, so that nothing is sent twice.
 * @returns how many still wait for the server; those in trouble wait for their owner
 */
export async function sendWaiting(): Promise<number> {
  return alone(async () => {
    for (const one of await waitingChanges()) {
      if (one.trouble) continue;
      const sent = await send(one, one.unanswered);
      if (sent.unreachable) {
        if (sent.unanswered && !one.unanswered) await put({...one, unanswered: true});
        break;
      }
      await settle(one, sent);
    }
    return (await waitingChanges()).filter(({trouble}) => !trouble).length;
  });
}

// Browsers give locks to pages from this machine or over TLS only.
const alone = (work: () => Promise<number>): Promise<number> => ("locks" in navigator ? navigator.locks.request("ticking outbox", work) : work());

/** Throws a waiting change away, and the draft it came from. */
export async function dropWaiting({key, garment}: Waiting): Promise<void> {
  await (await database()).delete("waiting", key);
  await dropDraft(garment);
  tell(null);
}

/** The id under which a garment of this device's own name hangs on the rack by now. */
export const hungAs = (garment: string): string | null => (isDraftName(garment) ? localStorage.getItem(`ticking.hung.${garment}`) : null);

function noteHung(garment: string, id: string): void {
  if (isDraftName(garment)) localStorage.setItem(`ticking.hung.${garment}`, id);
}

/** A name for this window that outlives a reload of its page. */
function thisWindow(): string {
  const name = sessionStorage.getItem("ticking.window") ?? newDraftName();
  sessionStorage.setItem("ticking.window", name);
  return name;
}

async function settle(one: Waiting, sent: Exclude<Sent, {unreachable: true}>): Promise<void> {
  const db = await database();
  const now = await db.get("waiting", one.key);
  // It was changed again while it was on its way: what was typed since goes on top of what has just been saved.
  const changed = now !== undefined && !same(now.content, one.content);
  if (sent.saved) {
    noteHung(one.garment, sent.saved.id);
    if (changed) await put({...now, garment: sent.saved.id, base: sent.saved.rev, was: sent.saved.content, what: "changed", unanswered: false});
    else await db.delete("waiting", one.key);
    const draft = await draftOf(one.garment);
    if (draft && same(draft.content, one.content)) await dropDraft(one.garment);
  } else if (now) {
    await put({...now, trouble: sent.conflict ? {conflict: sent.conflict} : {problems: sent.problems}});
  }
  tell({garment: one.garment, kept: sent});
}

async function put(one: Omit<Waiting, "key"> & {readonly key?: number}): Promise<void> {
  await (await database()).put("waiting", one as Waiting);
  tell(null);
}

function tell(news: OutboxNews): void {
  for (const listener of listeners) listener(news);
  others.postMessage(null);
}
