// The grade in a word, what decided it, and what would better it.
import {Link} from "wouter";
import {sayPoints, type Graded} from "../../state/grade.ts";
import type {GradeRule} from "../../state/rule.ts";
import {capital} from "./measure-figure.tsx";

export function GradeBand({graded, rule}: {readonly graded: Graded | null; readonly rule: GradeRule}) {
  if (!graded) {
    return (
      <section className="verdict grade-band" aria-label="Grade">
        <p className="quiet">State</p>
        <h1>Not looked at yet</h1>
        <p>Say how worn and how clean it is, and press the drawing where a flaw is: the grade follows by <Link href="/grade-rule">the rule</Link>.</p>
      </section>
    );
  }
  const {grade, points, sentence, mended, untold, parts} = graded;
  return (
    <section className="verdict grade-band" aria-label="Grade">
      <p className="quiet">State{untold.length > 0 && ", as far as told"}</p>
      <h1 aria-live="polite">{capital(grade)}</h1>
      <p className="grade-why">{sentence.slice(sentence.indexOf(":") + 2).replace(/^./, (first) => first.toUpperCase())}</p>
      {mended && <p>With every flaw mended: <b>{mended}</b>.</p>}
      {untold.length > 0 && <p className="quiet">Nobody said yet: {untold.join(" and ")}.</p>}
      <p className="quiet">{sayPoints(points)} by <Link href="/grade-rule">{rule.title}</Link>; {upTo(rule, grade)}{parts.filter((part) => part.points > 0).length > 0 && <> · {parts.filter((part) => part.points > 0).map((part) => `${part.says} ${part.points}`).join(", ")}</>}</p>
    </section>
  );
}

const upTo = (rule: GradeRule, grade: Graded["grade"]) => (grade === "poor" ? `poor begins above ${rule.upTo.fair}` : `${grade} goes up to ${rule.upTo[grade]}`);
