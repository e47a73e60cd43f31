// Another screen may lead to a look: the address names its mark, and its place is opened once.
import {useEffect, useRef} from "react";
import {useSearch} from "wouter";
import {rowsId} from "../../engine/index.ts";
import type {SeePlace} from "./marks.ts";

export function useLedLook(places: readonly SeePlace[], onOpen: (place: string, mark: string) => void): void {
  const led = new URLSearchParams(useSearch()).get("look");
  const followed = useRef<string | null>(null);
  const open = useRef(onOpen);
  open.current = onOpen;
  useEffect(() => {
    if (led === null || led === followed.current) return;
    const at = places.find(({marks}) => marks.some((mark) => mark.id === led));
    if (!at && led !== rowsId) return;
    followed.current = led;
    if (at) open.current(at.id, led);
    else document.querySelector(".slip-part, .slip")?.scrollIntoView({block: "center"});
  }, [led, places]);
}
