// What a changed rule would do to the garments on the rack, before it is saved.
import {useEffect, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import {grades, type Grade} from "../../state/model.ts";
import type {GradeRule} from "../../state/rule.ts";
import {problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";

interface RackGrades {
  readonly graded: number;
  readonly open: number;
  readonly now: Readonly<Record<Grade, number>>;
  readonly tried: Readonly<Record<Grade, number>>;
  readonly moved: readonly {readonly id: string; readonly number: string; readonly from: Grade; readonly to: Grade; readonly why: string}[];
  readonly movedCount: number;
}

const settleMs = 400;

/** @param rule  null while it cannot stand */
export function RulePreview({rule}: {readonly rule: GradeRule | null}) {
  const [shown, setShown] = useState<RackGrades | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    if (!rule) return;
    const stop = new AbortController();
    const timer = setTimeout(() => {
      sendJson<RackGrades>("POST", "/api/state/grades", {rule}, {signal: stop.signal}).then((answer) => (setShown(answer), setProblems([])), (error: unknown) => !stop.signal.aborted && setProblems(problemsOf(error)));
    }, settleMs);
    return () => (clearTimeout(timer), stop.abort());
  }, [rule]);
  return (
    <section className="rule-preview" aria-label="On the rack">
      <header><h2>On the rack</h2>{shown && <span className="quiet">{shown.graded} with a state noted, {shown.open} without</span>}</header>
      <ProblemList problems={problems} />
      {shown && shown.graded === 0 && <p className="quiet">Nothing is looked over yet: note the state of a garment, and what the rule makes of it stands here.</p>}
      {shown && shown.graded > 0 && (
        <>
          <table>
            <thead><tr><th scope="col">Grade</th><th scope="col">now</th><th scope="col">by this rule</th></tr></thead>
            <tbody>{grades.map((grade) => <tr key={grade}><th scope="row">{grade}</th><td>{shown.now[grade]}</td><td>{shown.tried[grade] === shown.now[grade] ? shown.tried[grade] : <b>{shown.tried[grade]}</b>}</td></tr>)}</tbody>
          </table>
          <p role="status">{shown.movedCount === 0 ? "No garment changes its grade." : `${shown.movedCount} ${shown.movedCount === 1 ? "garment changes its" : "garments change their"} grade.`}</p>
          <ul>{shown.moved.slice(0, 20).map(({id, number, from, to, why}) => <li key={id}><Link href={`/measure/${id}`}>{number}</Link> {from} → <b>{to}</b> <span className="quiet">{why}</span></li>)}</ul>
        </>
      )}
    </section>
  );
}
