// How much room an element has, kept true when the window changes.
import {useEffect, useState, type RefObject} from "react";

export function useWide(element: RefObject<HTMLElement | null>, before: number): number {
  const [width, set] = useState(before);
  useEffect(() => {
    const watch = new ResizeObserver(([entry]) => entry && set(Math.floor(entry.contentRect.width)));
    if (element.current) watch.observe(element.current);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
