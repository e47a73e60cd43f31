// Saves: each goes to the server at once, or waits on this device until the server can be reached, and then goes in order.
import type {Problem} from "../../engine/problem.ts";
import type {Content, GarmentRecord} from "../../store/model.ts";
import {database} from "./database.ts";
import type {Conflict, GarmentChange, Waiting} from "./kept.ts";
import {same} from "./merge.ts";
import {send, type Sent} from "./send.ts";

/** What became of a change: saved, kept until the server is back, in conflict with a newer save, or refused. */
export type Kept =
  | {readonly saved: GarmentRecord; readonly waiting?: undefined; readonly conflict?: undefined; readonly problems?: undefined}
  | {readonly waiting: true; readonly saved?: undefined; readonly conflict?: undefined; readonly problems?: undefined}
  | {readonly conflict: Conflict; readonly saved?: undefined; readonly waiting?: undefined; readonly problems?: undefined}
  | {readonly problems: readonly Problem[]; readonly saved?: undefined; readonly waiting?: undefined; readonly conflict?: undefined};

/** Told whenever the list of what waits changes; `saved` when a waiting change reached the rack. */
export type OutboxNews = {readonly garment: string; readonly saved: GarmentRecord} | null;

const listeners = new Set<(news: OutboxNews) => void>();

/** Watches the outbox; returns the function that stops it. */
export function watchOutbox(listener: (news: OutboxNews) => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/**
 * Saves a change, or keeps it until it can be saved.
 * A change of a garment of which one already waits takes the place of that one: the last word counts.
 * @returns never throws for a missing server; a conflict or a problem is told, and nothing is kept then but the caller's draft
 */
export async function keepGarment(change: GarmentChange): Promise<Kept> {
  const earlier = (await waitingChanges()).find(({garment}) => garment === change.garment);
  if (!earlier) {
    const sent = await send(change, false);
    if (!sent.unreachable) return sent;
    await put({...change, at: new Date().toISOString(), unanswered: sent.unanswered, trouble: null});
    return {waiting: true};
  }
  await put({...earlier, content: change.content, trouble: null});
  await sendWaiting();
  return {waiting: true};
}

/** What waits on this device, the oldest first. */
export async function waitingChanges(): Promise<readonly Waiting[]> {
  return (await database()).getAll("waiting");
}

/**
 * Sends what waits, in order, until the server cannot be reached. One tab at a time, so that nothing is sent twice.
 * @returns how many still wait
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
    return (await waitingChanges()).length;
  });
}

// Browsers give locks to pages from this machine or over TLS only.
const alone = (work: () => Promise<number>): Promise<number> => ("locks" in navigator ? navigator.locks.request("ticking outbox", work) : work());

/** Answers a conflict: this content is to be saved on top of what stands there now. */
export async function resolveWaiting({key}: Waiting, content: Content): Promise<void> {
  const one = await (await database()).get("waiting", key);
  if (!one?.trouble?.conflict) return;
  const {now} = one.trouble.conflict;
  await put({...one, content, base: now.rev, was: now.content, unanswered: false, trouble: null});
  await sendWaiting();
}

/** Throws a waiting change away. */
export async function dropWaiting({key}: Waiting): Promise<void> {
  await (await database()).delete("waiting", key);
  tell(null);
}

async function settle(one: Waiting, sent: Exclude<Sent, {unreachable: true}>): Promise<void> {
  const db = await database();
  const now = await db.get("waiting", one.key);
  // It was changed again while it was on its way: what was typed since goes on top of what has just been saved.
  const changed = now !== undefined && !same(now.content, one.content);
  if (sent.saved && !changed) await db.delete("waiting", one.key);
  else if (sent.saved && now) await put({...now, garment: sent.saved.id, base: sent.saved.rev, was: sent.saved.content, what: "changed", unanswered: false});
  else if (!sent.saved && now) await put({...now, trouble: sent.conflict ? {conflict: sent.conflict} : {problems: sent.problems}});
  tell(sent.saved ? {garment: one.garment, saved: sent.saved} : null);
}

async function put(one: Omit<Waiting, "key"> & {readonly key?: number}): Promise<void> {
  await (await database()).put("waiting", one as Waiting);
  tell(null);
}

function tell(news: OutboxNews): void {
  for (const listener of listeners) listener(news);
}
