// The history of one garment: who changed what, when, and a way back to any step.
import {useCallback, useEffect, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import type {GarmentRecord, Step} from "../../store/model.ts";
import {getJson, problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {sayChanges} from "./say-steps.ts";
import {useMarkNames} from "./use-mark-names.ts";
import "./rack.css";

export function HistoryScreen({id}: {id: string}) {
  const [steps, setSteps] = useState<readonly Step[] | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [said, setSaid] = useState("");
  const markNames = useMarkNames();
  const load = useCallback(() => getJson<readonly Step[]>(`/api/garments/${id}/history`).then(setSteps, (error: unknown) => setProblems(problemsOf(error))), [id]);
  useEffect(() => void load(), [load]);

  const last = steps?.at(-1);
  const act = async (path: string, body: object, done: string) => {
    const problems = await sendJson<GarmentRecord>("POST", `/api/garments/${id}/${path}`, {base: last!.rev, ...body}).then(() => [], problemsOf);
    // First what stands now: the next press must go on top of it.
    await load();
    setProblems(problems);
    setSaid(problems.length === 0 ? done : "");
  };
  const title = last?.content.garment.title ?? "";

  return (
    <main className="history">
      <p className="quiet"><Link href="/rack">Rack</Link> · {last?.removed ? <span className="code">{last.content.garment.garment}</span> : <Link href={`/examine/${id}`} className="code">{last?.content.garment.garment ?? "…"}</Link>}</p>
      <h1>{title ? `History of ${title}` : "History"}</h1>
      <p role="status" className="quiet">{said || (steps ? `${steps.length} ${steps.length === 1 ? "step" : "steps"}, the newest first. Going back adds a step; nothing is ever lost.` : "Looking …")}</p>
      <ProblemList problems={problems} />
      {last?.removed && <p><button type="button" className="main" onClick={() => void act("put-back", {}, "Put back on the rack.")}>Put it back on the rack</button></p>}
      <ol className="steps" reversed>
        {steps?.toReversed().map((step, i) => {
          const before = steps[steps.length - 2 - i];
          const changes = sayChanges(before?.content ?? null, step.content, (mark) => markNames.get(mark) ?? mark);
          return (
            <li key={step.rev} value={step.rev}>
              <p className="step-head">
                <b>{step.what}</b> <span className="quiet">by {step.who}, <time dateTime={step.at}>{sayInstant(step.at)}</time></span>
              </p>
              {changes.length > 0 && <ul>{changes.map((change) => <li key={change}>{change}</li>)}</ul>}
              {step.rev !== last!.rev && <button type="button" className="plain" onClick={() => void act("undo", {rev: step.rev}, `Back to step ${step.rev}.`)}>{`Go back to step ${step.rev}`}</button>}
            </li>
          );
        })}
      </ol>
    </main>
  );
}

const sayInstant = (at: string) => new Date(at).toLocaleString(undefined, {dateStyle: "medium", timeStyle: "short"});
