// What a screen says of itself at the end of the bar.
import {useEffect, useState, type ReactNode} from "react";
import {createPortal} from "react-dom";
import {barNote} from "./bar.tsx";

export function BarNote({children}: {readonly children: ReactNode}) {
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useEffect(() => setPlace(document.getElementById(barNote)), []);
  return place && createPortal(children, place);
}
