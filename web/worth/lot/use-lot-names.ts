// What the garments of a lot are called, fetched a few at a time.
import {useEffect, useRef, useState} from "react";
import type {GarmentRecord} from "../../../store/model.ts";
import {getJson} from "../../api.ts";

export interface LotName {
  readonly number: string;
  readonly words: string;
}

const atOnce = 6;

export function useLotNames(ids: readonly string[]): ReadonlyMap<string, LotName> {
  const [names, setNames] = useState<ReadonlyMap<string, LotName>>(new Map());
  const asked = useRef(new Set<string>());
  useEffect(() => {
    const missing = ids.filter((id) => !asked.current.has(id));
    missing.forEach((id) => asked.current.add(id));
    void (async () => {
      for (let from = 0; from < missing.length; from += atOnce) {
        const records = await Promise.all(missing.slice(from, from + atOnce).map((id) => getJson<GarmentRecord>(`/api/garments/${id}`).catch(() => null)));
        setNames((was) => new Map([...was, ...records.flatMap((record): [string, LotName][] => (record ? [[record.id, nameOf(record)]] : []))]));
      }
    })();
  }, [ids]);
  return names;
}

const nameOf = ({content: {garment, dating}}: GarmentRecord): LotName => ({number: garment.garment, words: [garment.title ?? garment.type ?? "", dating?.words ?? "not dated yet"].filter((part) => part !== "").join(", ")});
