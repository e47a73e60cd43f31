// The odds of each label kind for the rows that were read; worked out beside the page when nothing was changed for a moment.
import {useEffect, useRef, useState} from "react";
import type {KindOdds} from "../../commands/reading/suggest-kinds.ts";
import {labelId, type Book, type Garment, type RowText} from "../../engine/index.ts";
import type {KindsAsk, KindsTold} from "./kinds-worker.ts";

const pauseMs = 900;

/** @param rows  every row of the label, words among them; none: nothing is asked */
export function useKinds(garment: Garment, rows: readonly RowText[], books: readonly Book[]): readonly KindOdds[] {
  const [kinds, set] = useState<readonly KindOdds[]>([]);
  const worker = useRef<{worker: Worker; books: readonly Book[]} | null>(null);
  const makers = [garment.maker ?? []].flat();
  const {[labelId]: known, rows: _, ...saw} = garment.saw;
  const key = JSON.stringify([rows, makers, saw]);
  const wanted = rows.length > 0 && makers.length > 0 && books.length > 0 && known === undefined;
  useEffect(() => () => worker.current?.worker.terminate(), []);
  useEffect(() => {
    set([]);
    if (!wanted) return;
    const timer = setTimeout(() => {
      const fresh = worker.current?.books !== books;
      if (fresh) {
        worker.current?.worker.terminate();
        worker.current = {worker: new Worker(new URL("./kinds-worker.ts", import.meta.url), {type: "module"}), books};
      }
      const {worker: own} = worker.current!;
      const now = new Date();
      const ask: KindsAsk = {
        id: Date.now(), rows, makers, garment: {...garment, saw: saw as Garment["saw"]}, today: `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}`,
        ...(fresh && {books: JSON.stringify(books)}),
      };
      own.onmessage = ({data}: MessageEvent<KindsTold>) => data.id === ask.id && set(data.kinds);
      own.postMessage(ask);
    }, pauseMs);
    return () => clearTimeout(timer);
  }, [key, wanted, books]);
  return kinds;
}
