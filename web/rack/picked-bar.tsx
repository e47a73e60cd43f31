// What can be done with the picked garments, at the foot of the window.
import {useState} from "react";
import {useLocation} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import type {RackView} from "./address.ts";
import {ChangePanel} from "./change-panel.tsx";
import {idsOf} from "./date-again.ts";
import {DateAgainPanel} from "./date-again-panel.tsx";
import {sayGarments} from "./say.ts";
import type {Picked} from "./use-picked.ts";
import {problemsOf} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {keepWanted} from "../paper/wanted.ts";
import {keepLot, readLot, withGarments} from "../worth/lot/lot-draft.ts";

export interface PickedBarProps {
  readonly picked: Picked;
  readonly total: number;
  readonly query: RackView["query"];
  readonly places: readonly string[];
  readonly tags: readonly string[];
  /** Called after garments were changed. */
  readonly onChanged: () => void;
}

export function PickedBar({picked, total, query, places, tags, onChanged}: PickedBarProps) {
  const [, go] = useLocation();
  const [open, setOpen] = useState<"change" | "date" | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const ids = [...picked.ids];
  // Until all ids are here, what is picked is not what its owner meant: nothing may be done with it.
  const [picking, setPicking] = useState(false);
  const pickAll = async () => {
    setPicking(true);
    setProblems([]);
    await idsOf(query).then(picked.pickAll, (error: unknown) => setProblems(problemsOf(error)));
    setPicking(false);
  };
  if (ids.length === 0) return null;
  return (
    <aside className="picked-bar" aria-label="Picked garments">
      {open === "change" && <ChangePanel ids={ids} places={places} tags={tags} onDone={onChanged} onClose={() => setOpen(null)} />}
      {open === "date" && <DateAgainPanel ids={ids} onDone={onChanged} onClose={() => setOpen(null)} />}
      <ProblemList problems={problems} />
      {open === null && <div className="picked-line">
        <b role="status">{picking ? "Picking all …" : `${sayGarments(ids.length)} picked`}</b>
        {ids.length < total && <button type="button" className="plain" disabled={picking} onClick={() => void pickAll()}>{`Pick all ${total.toLocaleString()}`}</button>}
        <button type="button" className="plain" disabled={picking} onClick={() => setOpen("change")}>Change together</button>
        <button type="button" className="plain" disabled={picking} onClick={() => setOpen("date")}>Date again</button>
        <button type="button" className="plain" disabled={picking} onClick={() => (keepWanted(ids), go("/paper"))}>Put on paper</button>
        <button type="button" className="plain" disabled={picking} onClick={() => (keepLot(withGarments(readLot(), ids)), go("/lot"))}>Put into the lot</button>
        <button type="button" className="plain" disabled={picking} onClick={picked.letGo}>Let go</button>
      </div>}
    </aside>
  );
}
