// The garment on the screen: every change is kept on this device at once, and goes to the rack a moment later; each can be undone.
import {useCallback, useEffect, useReducer, useRef, useState} from "react";
import type {Problem} from "../../engine/index.ts";
import {contentSchema, type Content, type GarmentRecord} from "../../store/model.ts";
import {ApiFault, getJson, problemsOf, sendJson} from "../api.ts";
import {draftOf, dropDraft, keepDraft} from "../offline/draft.ts";
import {isDraftName, newDraftName, type Conflict} from "../offline/kept.ts";
import {mergeContent} from "../offline/merge.ts";
import {hungAs, keepGarment, watchOutbox} from "../offline/outbox.ts";
import {changedPart} from "./changed-part.ts";

export type Saving = "draft" | "typing" | "saving" | "saved" | "waiting" | "conflict" | "refused";

interface Sheet {
  /** Id on the rack, or a name of this device's own. */
  readonly garment: string;
  readonly base: number;
  readonly was: Content | null;
  readonly content: Content;
  readonly past: readonly Content[];
  readonly future: readonly Content[];
  /** When it was last typed in. */
  readonly typedAt?: number;
}

type Act =
  | {readonly open: Omit<Sheet, "past" | "future" | "typedAt">}
  | {readonly content: Content; readonly at?: number}
  | {readonly back: true}
  | {readonly forth: true}
  | {readonly saved: GarmentRecord; readonly content?: Content}
  /** The name under which a new garment waits for the server. */
  | {readonly name: string};

const mostUndo = 200;
const settleMs = 800;
/** After a longer pause a new step of undoing begins. */
const typingMs = 1200;
/** What changes more at once was not typed, and is a step of its own. */
const mostLetters = 2;

function reduce(sheet: Sheet, act: Act): Sheet {
  if ("open" in act) return {...act.open, past: [], future: []};
  if ("name" in act) return {...sheet, garment: act.name};
  if ("saved" in act) return {...sheet, garment: act.saved.id, base: act.saved.rev, was: act.saved.content, content: act.content ?? sheet.content};
  if ("content" in act) return {...sheet, content: act.content, past: goesOn(sheet, act) ? sheet.past : [...sheet.past, sheet.content].slice(-mostUndo), future: [], typedAt: act.at};
  const [from, to] = "back" in act ? [sheet.past, sheet.future] : [sheet.future, sheet.past];
  const content = from.at(-1);
  if (!content) return sheet;
  const rest = from.slice(0, -1);
  const other = [...to, sheet.content];
  return {...sheet, content, typedAt: undefined, ...("back" in act ? {past: rest, future: other} : {past: other, future: rest})};
}

/** Whether a change goes on with the one before: the same part, without a pause. */
function goesOn({typedAt, past, content}: Sheet, {content: next, at}: {readonly content: Content; readonly at?: number}): boolean {
  if (typedAt === undefined || at === undefined || at - typedAt > typingMs || past.length === 0) return false;
  const part = changedPart(content, next);
  const letters = Math.abs(JSON.stringify(next).length - JSON.stringify(content).length);
  return part !== null && letters <= mostLetters && part === changedPart(past.at(-1)!, content);
}

/** A new garment, named by the minute. */
export function blank(now = new Date()): Content {
  const two = (value: number) => String(value).padStart(2, "0");
  const number = `${two(now.getFullYear() % 100)}${two(now.getMonth() + 1)}${two(now.getDate())}-${two(now.getHours())}${two(now.getMinutes())}`;
  return contentSchema.parse({garment: {garment: number, type: "trousers", saw: {}}});
}

export interface OpenGarment {
  readonly content: Content;
  readonly id: string | null;
  readonly ready: boolean;
  readonly saving: Saving;
  readonly savedAt: number | null;
  readonly problems: readonly Problem[];
  readonly conflict: Conflict | null;
  /** It was taken off the rack, and is shown as it hung there. */
  readonly off: boolean;
  putBack(): void;
  change(content: Content): void;
  /** Puts a new garment on the rack. */
  hang(): void;
  settle(content: Content): void;
  undo: (() => void) | null;
  redo: (() => void) | null;
}

const blankName = "new-blank";

const notHere: Problem = {code: "screen/not-here", at: "this garment", what: "it was begun on another device, or thrown away", why: "so there is nothing of it here", fix: "look for it on the rack"};

/** @param id  on the rack; null for a garment that is not there yet */
export function useGarment(id: string | null, onHung: (id: string) => void): OpenGarment {
  const [sheet, act] = useReducer(reduce, null, () => ({garment: blankName, base: 0, was: null, content: blank(), past: [], future: []}));
  const [ready, setReady] = useState(false);
  const [saving, setSaving] = useState<Saving>("draft");
  const [savedAt, setSavedAt] = useState<number | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [conflict, setConflict] = useState<Conflict | null>(null);
  const [off, setOff] = useState(false);
  const touched = useRef(false);
  const latest = useRef(sheet);
  latest.current = sheet;
  /** What was last handed over to be saved, and a content that came from the rack and needs no saving. */
  const handed = useRef<Content | null>(null);
  const fromRack = useRef<Content | null>(null);
  /** The garment as the last save left it, and the saves in their order. */
  const ground = useRef<GarmentRecord | null>(null);
  const line = useRef<Promise<void>>(Promise.resolve());
  const hung = useRef(onHung);
  hung.current = onHung;

  useEffect(() => {
    let here = true;
    const name = id ?? blankName;
    // It was just hung up: the sheet is this garment already, with what was typed since.
    if (id !== null && latest.current.garment === id) return;
    touched.current = false;
    setConflict(null);
    setProblems([]);
    setReady(false);
    setOff(false);
    void (async () => {
      const draft = await draftOf(name).catch(() => null);
      if (id === null) {
        if (here) act({open: draft ?? {garment: blankName, base: 0, was: null, content: blank()}});
        setSaving("draft");
      } else if (isDraftName(id) && !draft) {
        const there = hungAs(id);
        if (there && here) return hung.current(there);
        if (here) setSaving("refused");
        if (here) setProblems([notHere]);
      } else if (isDraftName(id)) {
        if (here) act({open: draft!});
        setSaving("waiting");
      } else {
        try {
          const record = await getJson<GarmentRecord>(`/api/garments/${id}`);
          if (!here) return;
          act({open: draft ? {garment: id, base: draft.base, was: draft.was, content: draft.content} : {garment: id, base: record.rev, was: record.content, content: record.content}});
          setOff(record.removed);
          if (draft) touched.current = true;
          setSaving(draft ? "typing" : "saved");
          setSavedAt(draft ? null : Date.parse(record.changedAt));
        } catch (error) {
          if (!here) return;
          if (draft) act({open: {garment: id, base: draft.base, was: draft.was, content: draft.content}});
          setSaving(draft && !(error instanceof ApiFault) ? "waiting" : "refused");
          if (!draft) setProblems(problemsOf(error));
        }
      }
      if (here) setReady(true);
    })();
    return () => void (here = false);
  }, [id]);

  // One save after the other: each on top of what the one before has made.
  const save = useCallback((now: Sheet, name: string, what: string) => (line.current = line.current.then(() => saveNow(now, name, what)).catch(() => setSaving("refused"))), []);
  const saveNow = async (now: Sheet, name: string, what: string) => {
    setSaving("saving");
    handed.current = now.content;
    const {rev: base, content: was} = ground.current?.id === name && ground.current.rev > now.base ? ground.current : {rev: now.base, content: now.was};
    const kept = await keepGarment({garment: name, base, was, content: now.content, what});
    if (kept.saved) {
      ground.current = kept.saved;
      await dropDraft(now.garment);
      act({saved: kept.saved});
      setProblems([]);
      setConflict(null);
      setSavedAt(Date.now());
      setSaving("saved");
      if (isDraftName(now.garment)) move(kept.saved.id, now);
    } else if (kept.waiting) {
      setSaving("waiting");
      if (name === now.garment) return;
      // A new garment that waits goes by the name it waits under: the blank sheet is free for the next one.
      await keepDraft({garment: name, base: 0, was: null, content: latest.current.content, at: new Date().toISOString()});
      await dropDraft(now.garment);
      act({name});
      move(name, now);
    } else if (kept.conflict) {
      setConflict(kept.conflict);
      setSaving("conflict");
    } else {
      setProblems(kept.problems ?? []);
      setSaving("refused");
    }
  };

  // To the address of its new name; what was typed on the way there is saved like anything else.
  const move = (name: string, {content}: Sheet) => {
    hung.current(name);
    if (latest.current.content !== content) act({content: {...latest.current.content}});
  };

  // On this device at once; on the rack when nothing was typed for a moment.
  useEffect(() => {
    if (!ready || !touched.current || sheet.content === fromRack.current) return;
    void keepDraft({garment: sheet.garment, base: sheet.base, was: sheet.was, content: sheet.content, at: new Date().toISOString()}).catch(() => {});
    if (sheet.garment === blankName || saving === "conflict") return;
    setSaving("typing");
    const timer = setTimeout(() => void save(latest.current, latest.current.garment, "changed"), settleMs);
    return () => clearTimeout(timer);
    // Only what was typed starts a save.
  }, [sheet.content, ready]);

  useEffect(
    () =>
      watchOutbox((news) => {
        if (news?.garment !== latest.current.garment) return;
        const {saved, conflict: clash, problems: slips} = news.kept;
        if (saved) take(saved);
        else {
          setConflict(clash ?? null);
          setProblems(slips ?? []);
          setSaving(clash ? "conflict" : "refused");
        }
      }),
    [],
  );

  // What waited has reached the rack, perhaps together with what another window wrote: what was typed here since stays on top of it.
  const take = (saved: GarmentRecord) => {
    const {garment, content} = latest.current;
    const typed = handed.current !== null && content !== handed.current;
    const both = mergeContent(handed.current ?? content, content, saved.content).content;
    ground.current = saved;
    if (!typed) fromRack.current = both;
    act({saved, content: both});
    setConflict(null);
    setSaving(typed ? "typing" : "saved");
    setSavedAt(Date.now());
    if (isDraftName(garment)) hung.current(saved.id);
  };

  const touch = (next: Act) => {
    touched.current = true;
    act(next);
  };
  return {
    content: sheet.content,
    id: isDraftName(sheet.garment) ? null : sheet.garment,
    ready,
    saving,
    savedAt,
    problems,
    conflict,
    change: (content) => touch({content, at: Date.now()}),
    off,
    putBack: () =>
      void sendJson<GarmentRecord>("POST", `/api/garments/${sheet.garment}/put-back`, {base: sheet.base}).then(
        (back) => {
          setOff(false);
          take(back);
        },
        (error: unknown) => setProblems(problemsOf(error)),
      ),
    hang: () => void save(sheet, newDraftName(), "added"),
    settle(content) {
      if (!conflict) return;
      touched.current = true;
      act({saved: conflict.now});
      act({content});
      setConflict(null);
      void save({...sheet, base: conflict.now.rev, was: conflict.now.content, content}, sheet.garment, "merged");
    },
    undo: sheet.past.length > 0 ? () => touch({back: true}) : null,
    redo: sheet.future.length > 0 ? () => touch({forth: true}) : null,
  };
}
