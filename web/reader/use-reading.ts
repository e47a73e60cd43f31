// The reading of one photo: asked for anew whenever its outline or turn is changed, and how far it is.
import {useEffect, useRef, useState} from "react";
import {labelId, type Book, type Garment} from "../../engine/index.ts";
import type {Problem} from "../../engine/problem.ts";
import type {Quad, ReadingMap} from "../../reader/model.ts";
import type {ReadLabel} from "../../reader/read-label.ts";
import {getJson} from "../api.ts";
import type {Turn} from "./outline.ts";
import {originalOf} from "./photo-pixels.ts";
import {readPhoto} from "./photo-reader.ts";

/** How the label lies in the photo, as far as its owner said. */
export interface Frame {
  /** null: the whole photo. */
  readonly outline?: Quad | null;
  readonly turn?: Turn;
}

export type ReadingState = {readonly busy: string | null; readonly part: number | null} & (
  | {readonly end: null}
  | {readonly end: "read"; readonly reading: ReadLabel; readonly advice: readonly Problem[]; readonly seconds: number}
  | {readonly end: "cannot" | "missing"; readonly problems: readonly Problem[]}
);

const nothing: ReadingState = {busy: null, part: null, end: null};
/** A corner that is moved by keys is moved again at once. */
const settleMs = 350;

/** With no maker chosen all of them are asked what they can print, unless they are many. */
const fewMakers = 3;

/** @param frame  null: nothing is read */
export function useReading(photo: string | null, frame: Frame | null, garment: Garment, books: readonly Book[]): ReadingState {
  const [state, set] = useState<ReadingState>(nothing);
  const known = useRef<{makers: readonly Book[]; label: string | null}>(undefined!);
  const label = garment.saw[labelId];
  known.current = {makers: possible(garment, books), label: typeof label === "string" && label !== "other" && label !== "none" ? label : null};
  // A newer frame takes the place of one that is being read; the reader itself stops when nobody waits for it any more.
  const stop = useRef(() => {});
  useEffect(() => () => stop.current(), []);
  useEffect(() => set(nothing), [photo]);
  useEffect(() => {
    if (photo === null || frame === null) {
      stop.current();
      return set((was) => ({...was, busy: null, part: null}));
    }
    let here = true;
    const busy = (words: string, part: number | null = null) => here && set((was) => ({...was, busy: words, part}));
    const first = frame.outline === undefined && frame.turn === undefined;
    const timer = setTimeout(() => void begin(), first ? 0 : settleMs);
    const begin = async () => {
      busy("Looking for the label …");
      const [blob, map] = await Promise.all([originalOf(photo), ownMap()]);
      if (!here) return;
      if (!blob) return set({busy: null, part: null, end: "cannot", problems: [notHere]});
      const began = performance.now();
      stop.current = readPhoto({photo, blob, ...frame, ...(map && {map}), ...known.current}, (told) => {
        if (!here) return;
        if ("fetched" in told) busy(`Fetching the reader, this once: ${megabytes(told.fetched.done)} of ${megabytes(told.fetched.of)} MB`, told.fetched.done / told.fetched.of);
        else if ("rows" in told) busy(`Reading row ${Math.min(told.rows.done + 1, told.rows.of)} of ${told.rows.of} …`, told.rows.done / told.rows.of);
        else if ("missing" in told) set({busy: null, part: null, end: "missing", problems: [told.missing]});
        else if (told.reading === null) set({busy: null, part: null, end: "cannot", problems: told.problems});
        else {
          performance.measure("ticking photo read", {start: began});
          set({busy: null, part: null, end: "read", reading: told.reading, advice: told.problems, seconds: (performance.now() - began) / 1000});
        }
      });
    };
    return () => {
      here = false;
      clearTimeout(timer);
    };
  }, [photo, frame]);
  return state;
}

function possible({maker}: Garment, books: readonly Book[]): readonly Book[] {
  const makers = books.filter(({kind, book}) => kind === "maker" && (maker === undefined || [maker].flat().includes(book)));
  return maker === undefined && makers.length > fewMakers ? [] : makers;
}

const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);

/** The owner's own correction of the reader's chances, when one was fitted. */
const ownMap = () => getJson<{value?: ReadingMap} | null>("/api/settings/reading-map").then((setting) => setting?.value, () => undefined);

const notHere: Problem = {code: "screen/photo-not-here", at: "photo", what: "it is not on this device, and the server cannot be reached", why: "so that it cannot be read now", fix: "try again when the server is back, or type the rows as you see them"};
