// Which garments are picked for a common change: one by one, or a stretch of the list with the shift key held.
import {useCallback, useRef, useState} from "react";

export interface Picked {
  readonly ids: ReadonlySet<string>;
  /**
   * @param stretch  ids from the last one touched to this one, when the shift key is held; those not fetched yet are left out
   */
  readonly pick: (id: string, index: number, stretch: (from: number, until: number) => readonly string[], withShift: boolean) => void;
  readonly pickAll: (ids: readonly string[]) => void;
  readonly letGo: () => void;
}

export function usePicked(): Picked {
  const [ids, setIds] = useState<ReadonlySet<string>>(new Set());
  const last = useRef<number | null>(null);
  const pick = useCallback<Picked["pick"]>((id, index, stretch, withShift) => {
    const touched = withShift && last.current !== null ? stretch(Math.min(last.current, index), Math.max(last.current, index)) : [id];
    last.current = index;
    setIds((was) => {
      const off = was.has(id);
      const now = new Set(was);
      for (const one of touched) if (off) now.delete(one); else now.add(one);
      return now;
    });
  }, []);
  return {ids, pick, pickAll: useCallback((all) => setIds(new Set(all)), []), letGo: useCallback(() => setIds(new Set()), [])};
}
