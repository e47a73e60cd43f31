// The finding of the garment on the screen, always of its newest state; the last one stays until the new one is there.
import {useEffect, useRef, useState} from "react";
import type {Book, Brief, Finding, Garment, Problem} from "../../engine/index.ts";
import {problemsOf} from "../api.ts";
import {engine} from "./engine.ts";
import type {Told} from "./messages.ts";

export interface Answer {
  readonly brief: Brief | null;
  /** May be that of the state before while the new one is worked out. */
  readonly finding: Finding | null;
  readonly problems: readonly Problem[];
  readonly stale: boolean;
}

const nothing: Answer = {brief: null, finding: null, problems: [], stale: true};

export function useBooks(): {readonly books: readonly Book[]; readonly problems: readonly Problem[]} {
  const [state, set] = useState<{books: readonly Book[]; problems: readonly Problem[]}>({books: [], problems: []});
  useEffect(() => {
    let here = true;
    engine().then(({books}) => here && set({books, problems: []}), (error: unknown) => here && set({books: [], problems: problemsOf(error)}));
    return () => void (here = false);
  }, []);
  return state;
}

export function useFinding(garment: Garment): Answer {
  const [answer, setAnswer] = useState(nothing);
  const newest = useRef(garment);
  useEffect(() => {
    newest.current = garment;
    setAnswer((now) => ({...now, stale: true}));
    const hear = (told: Told) => {
      if (newest.current !== garment) return;
      if ("problems" in told) setAnswer((now) => ({...now, problems: told.problems, stale: false}));
      else if ("brief" in told) setAnswer((now) => ({...now, brief: told.brief, problems: []}));
      else setAnswer({brief: told.finding, finding: told.finding, problems: [], stale: false});
      performance.mark("finding" in told ? "ticking finding" : "ticking date");
    };
    void engine().then(
      (own) => {
        own.ask("date", {garment, depth: "date"}, (told) => {
          hear(told);
          // Only then, so that the two do not share the machine; where the garment cannot be dated there are no reasons.
          if ("brief" in told && newest.current === garment) own.ask("whole", {garment, depth: "whole"}, hear);
        });
      },
      (error: unknown) => setAnswer((now) => ({...now, problems: problemsOf(error), stale: false})),
    );
  }, [garment]);
  return answer;
}

/** The date without one mark; null while none is left out. */
export function useWithout(garment: Garment, mark: string | null): Brief | null {
  const [brief, set] = useState<{mark: string; garment: Garment; brief: Brief} | null>(null);
  useEffect(() => {
    if (mark === null) return;
    let here = true;
    void engine().then((own) => own.ask("without", {garment, depth: "date", without: mark}, (told) => here && "brief" in told && set({mark, garment, brief: told.brief})));
    return () => void (here = false);
  }, [garment, mark]);
  return mark !== null && brief?.mark === mark && brief.garment === garment ? brief.brief : null;
}
