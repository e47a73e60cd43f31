// What a long list needs to know of the window: where it begins, and what of it is in sight.
import {useLayoutEffect, useState, type RefObject} from "react";
import type {Shelf} from "./shelf.ts";

/** Where an element begins in the page, so that the window's own scrolling moves the list. */
export function useTop(frame: RefObject<HTMLElement | null>): number {
  const [top, setTop] = useState(0);
  useLayoutEffect(() => {
    const measure = () => setTop(frame.current ? Math.round(frame.current.getBoundingClientRect().top + window.scrollY) : 0);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(document.body);
    return () => observer.disconnect();
  }, [frame]);
  return top;
}

/** Has what comes into sight fetched. */
export function useWanted(want: (first: number, last: number) => void, first: number | undefined, last: number | undefined): void {
  useLayoutEffect(() => {
    if (first !== undefined && last !== undefined) want(first, last);
  }, [want, first, last]);
}

export function idsBetween(rowAt: Shelf["rowAt"], from: number, until: number): string[] {
  const ids: string[] = [];
  for (let i = from; i <= until; i++) {
    const row = rowAt(i);
    if (row) ids.push(row.id);
  }
  return ids;
}
