// The one way a garment is saved: its photos are there, its money can be, its dating belongs to its marks, and nobody else's change is lost.
import type {Content, GarmentRecord} from "../../store/model.ts";
import type {Save, Saved} from "../../store/store.ts";
import type {Problem} from "../../engine/index.ts";
import * as say from "./problems.ts";
import {moneyProblems} from "../worth/check-money.ts";
import {lastDay} from "../worth/last-day.ts";
import type {Rack} from "./rack.ts";
import {unfit, unknown, type Reply} from "./rack-command.ts";

/**
 * Saves one change.
 * A garment whose marks stay as they are keeps its dating and the editions it was dated by; one that cannot be dated is kept undated.
 */
export async function saveOne(rack: Rack, change: Pick<Save, "id" | "base" | "content" | "removed" | "what">): Promise<Reply<GarmentRecord>> {
  const before = change.id === null ? null : await rack.store.get(change.id);
  if (change.id !== null && !before) return unknown(say.noGarment(change.id));
  const problems = [...moneyProblems(change.content, before?.content ?? null, lastDay(rack.now)), ...(await photoProblems(rack, change.content))];
  if (problems.length > 0) return unfit(problems);
  const content = await dated(rack, change.content, before);
  const {store, who, now: at} = rack;
  return replyOf(await store.save({...change, content, who, at}), change.id);
}

/** What became of a change, as a reply. */
export function replyOf(saved: Saved, id: string | null): Reply<GarmentRecord> {
  if (saved.saved) return {answer: saved.saved};
  if (saved.unknown) return unknown(say.noGarment(id ?? ""));
  const {now, base} = saved.conflict;
  return {refused: "conflict", problems: [say.savedBetween(now.content.garment.garment, now.changedBy, now.changedAt)], more: {now, base}};
}

async function dated(rack: Rack, content: Content, before: GarmentRecord | null): Promise<Content> {
  if (before?.content.dating && sameMarks(content, before.content)) return {...content, dating: before.content.dating};
  const [found] = await rack.date([content.garment]);
  return {...content, dating: found!.dating ?? null};
}

/** Whether two contents must be dated alike: number, title and note tell no date. */
export function sameMarks(a: Content, b: Content): boolean {
  const told = ({garment: {saw, maker, market, type}}: Content) => JSON.stringify([Object.entries(saw).sort(([m], [n]) => (m < n ? -1 : 1)), maker, market, type]);
  return told(a) === told(b);
}

async function photoProblems({store}: Rack, {photos}: Content): Promise<Problem[]> {
  const found = await Promise.all(photos.map(({photo}) => store.photo(photo)));
  return photos.flatMap(({photo}, i) => (found[i] ? [] : [say.noPhoto(`content.photos #${i + 1}`, photo)]));
}
