// What the books in use call the marks, so that ids need not be read by people.
import {useEffect, useState} from "react";
import type {Book} from "../../engine/rule/schema.ts";
import {getJson} from "../api.ts";

/** @returns names of marks by their ids; empty until the books have come */
export function useMarkNames(): ReadonlyMap<string, string> {
  const [names, setNames] = useState<ReadonlyMap<string, string>>(new Map());
  useEffect(() => {
    const stop = new AbortController();
    getJson<readonly Book[]>("/api/books/used", {signal: stop.signal})
      .then((books) => setNames(new Map(books.flatMap(namesIn))))
      // Ids are good enough names when the books cannot be had.
      .catch(() => {});
    return () => stop.abort();
  }, []);
  return names;
}

function namesIn({marks, labels}: Book): [string, string][] {
  const own = Object.entries(marks).map(([id, {name}]): [string, string] => [id, name]);
  return [...(labels ? [["label", labels.name] as [string, string]] : []), ["rows", "rows of the label"], ...own];
}
