// On the examine screen: the grade, the sizes and what a needle did, with the way to measuring.
import {useMemo} from "react";
import {Link} from "wouter";
import {sayOdds} from "../../engine/index.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {gradeOf} from "../../state/grade.ts";
import {measuredOf} from "../../state/point.ts";
import {sayMm} from "../../state/length.ts";
import {oddSizes, tagChecks} from "../../state/tag-check.ts";
import type {Content} from "../../store/model.ts";
import {capital} from "./measure-figure.tsx";
import {useGradeRule} from "./use-grade-rule.ts";

export function StateLine({content, id}: {readonly content: Content; readonly id: string | null}) {
  const {garment, sizes, state} = content;
  const rule = useGradeRule();
  const kind = kindOf(garment.type);
  const odd = useMemo(() => (sizes ? oddSizes(tagChecks(kind, sizes, state)) : []), [kind, sizes, state]);
  const measured = sizes ? measuredOf(kind, sizes) : [];
  return (
    <section aria-label="Measures and state" className="state-line details">
      <header><h2>Measures and state</h2><Link className="quiet" href={id ? `/measure/${id}` : "/measure"}>Measure and look over</Link></header>
      {odd.map(({id: mark, says, probability}) => <p key={mark} className="odd-box"><b>Odd, by the tape.</b> {capital(says)} ({sayOdds(probability)}). It does not move the date.</p>)}
      {state && <p>{gradeOf(state, rule).sentence}</p>}
      {measured.length > 0 && <p className="quiet">{measured.slice(0, 4).map(({point, whole}) => `${point.name} ${sayMm(whole.mm, whole.unit)}`).join(", ")}{measured.length > 4 ? ` and ${measured.length - 4} more` : ""}.</p>}
      {!state && measured.length === 0 && <p className="quiet">Not measured and not looked over yet.</p>}
    </section>
  );
}
