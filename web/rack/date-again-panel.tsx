// Dating again on screen: how far it is, a way to stop, and then what moved and why.
import {useEffect, useRef, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import {problemsOf} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {dateAgain, type DatedAgain} from "./date-again.ts";
import {sayGarments} from "./say.ts";

export function DateAgainPanel({ids, onDone, onClose}: {ids: readonly string[]; onDone: () => void; onClose: () => void}) {
  const [state, setState] = useState<DatedAgain>({done: 0, of: ids.length, moved: [], same: 0, problems: []});
  const [ended, setEnded] = useState<"no" | "all" | "stopped" | "broken">("no");
  const [trouble, setTrouble] = useState<readonly Problem[]>([]);
  const stop = useRef(new AbortController());
  const begun = useRef(false);

  useEffect(() => {
    if (begun.current) return;
    begun.current = true;
    dateAgain(ids, setState, stop.current.signal)
      .then(({done, of}) => setEnded(done < of ? "stopped" : "all"))
      .catch((error: unknown) => {
        setTrouble(problemsOf(error));
        setEnded("broken");
      })
      .finally(onDone);
  }, [ids, onDone]);

  return (
    <section className="panel" aria-label="Date again">
      <div className="panel-head">
        <h2>{ended === "no" ? `Dating ${sayGarments(ids.length)} again` : saidAtTheEnd(state, ended)}</h2>
        {ended !== "no" && <button type="button" className="plain" onClick={onClose}>Close</button>}
      </div>
      {ended === "no" && (
        <>
          <progress max={Math.max(1, state.of)} value={state.done} aria-label="Garments dated" />
          <p className="panel-line">
            <span role="status">{`${state.done.toLocaleString()} of ${state.of.toLocaleString()}, ${state.moved.length} moved`}</span>
            <button type="button" className="plain" onClick={() => stop.current.abort()} disabled={stop.current.signal.aborted}>Stop</button>
          </p>
        </>
      )}
      <ProblemList problems={trouble} />
      {[...byReason(state.moved)].map(([why, moved]) => (
        <section key={why} aria-label={why}>
          <p className="quiet">{why}</p>
          <ul className="moved">
            {moved.map(({id, number, from, to}) => (
              <li key={id}>
                <Link href={`/examine/${id}`} className="code">{number}</Link>
                <span>{from} <span role="img" aria-label="is now">→</span> <b>{to}</b></span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <ProblemList problems={state.problems} />
    </section>
  );
}

/** A new edition often moves many for one reason, which is worth reading once. */
function byReason(moved: DatedAgain["moved"]): Map<string, DatedAgain["moved"]> {
  const reasons = new Map<string, DatedAgain["moved"]>();
  for (const one of moved) reasons.set(one.why, [...(reasons.get(one.why) ?? []), one]);
  return reasons;
}

function saidAtTheEnd({done, moved, same, problems, of}: DatedAgain, ended: string): string {
  const counts = `${moved.length} moved, ${same} stayed where they were${problems.length > 0 ? `, ${problems.length} could not be dated` : ""}`;
  return ended === "all" ? `Dated again: ${counts}` : `${ended === "stopped" ? "Stopped" : "Broken off"} after ${done} of ${of}: ${counts}; the rest is as it was`;
}
