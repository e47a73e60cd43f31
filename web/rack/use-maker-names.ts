// Titles of makers' books, as a dealer says them: without what the book is about.
import {useEffect, useState} from "react";
import {getJson} from "../api.ts";

/** @returns names of makers by the ids of their books; empty until the books have come */
export function useMakers(): ReadonlyMap<string, string> {
  const [names, setNames] = useState<ReadonlyMap<string, string>>(new Map());
  useEffect(() => {
    const stop = new AbortController();
    getJson<readonly {book: string; title: string}[]>("/api/books", {signal: stop.signal})
      .then((books) => setNames(new Map(books.map(({book, title}) => [book, title.split(",")[0]!]))))
      // Ids are good enough names when the books cannot be had.
      .catch(() => {});
    return () => stop.abort();
  }, []);
  return names;
}

/** @returns the name of a maker by the id of its book; the id itself until the books have come */
export function useMakerNames(): (maker: string) => string {
  const names = useMakers();
  return (maker) => names.get(maker) ?? maker;
}
