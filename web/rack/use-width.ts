// The width of an element in pixels, as it changes.
import {useEffect, useState, type RefObject} from "react";

/** @param first  taken until the element has been laid out */
export function useWidth(element: RefObject<HTMLElement | null>, first: number): number {
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const observer = new ResizeObserver(([entry]) => setWidth(Math.max(1, Math.round(entry!.contentRect.width))));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
