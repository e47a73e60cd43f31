// How far each word goes, drawn as a hem with its words, and what wear and dirt cost.
import {grades} from "../../state/model.ts";
import {cleans, wears, type GradeRule} from "../../state/rule.ts";
import {capital} from "./measure-figure.tsx";
import {PointsField} from "./points-field.tsx";

export function RuleScale({rule, onChange}: {readonly rule: GradeRule; onChange(rule: GradeRule): void}) {
  const words = grades.slice(0, 5) as (keyof GradeRule["upTo"])[];
  return (
    <>
      <section aria-label="Words of the rule">
        <header><h2>Words</h2><span className="quiet">each goes up to so many points; beyond the last it is poor</span></header>
        <div className="rule-fields">{words.map((word) => <PointsField key={word} label={capital(word)} value={rule.upTo[word]} most={word === "deadstock" ? 100 : 1000} onValue={(points) => onChange({...rule, upTo: {...rule.upTo, [word]: points}})} />)}</div>
        <label className="one-tick"><input type="checkbox" checked={rule.unworn} onChange={({target}) => onChange({...rule, unworn: target.checked})} /> deadstock only when unworn, with its tags</label>
      </section>
      <section aria-label="Wear and cleanliness of the rule">
        <header><h2>Wear and cleanliness</h2></header>
        <div className="rule-fields">
          {wears.map((wear) => <PointsField key={wear} label={wear === "worn out" ? "Worn out" : `Wear: ${wear}`} value={rule.wear[wear]} onValue={(points) => onChange({...rule, wear: {...rule.wear, [wear]: points}})} />)}
          {cleans.map((clean) => <PointsField key={clean} label={capital(clean)} value={rule.clean[clean]} onValue={(points) => onChange({...rule, clean: {...rule.clean, [clean]: points}})} />)}
        </div>
      </section>
    </>
  );
}
