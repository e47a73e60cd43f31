// The written rule for grades, to be read and changed; what it would change on the rack stands beside it.
import {useMemo, useState} from "react";
import {Link} from "wouter";
import {checkShape} from "../../rulebooks/shape.ts";
import {printPath} from "../../rulebooks/place.ts";
import {defaultRule} from "../../state/default-rule.ts";
import {gradeRuleSchema, type GradeRule} from "../../state/rule.ts";
import {same} from "../offline/merge.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {useSetting, type OpenSetting} from "../worth/terms/use-setting.ts";
import {RuleFlaws} from "./rule-flaws.tsx";
import {RulePlaces} from "./rule-places.tsx";
import {RulePreview} from "./rule-preview.tsx";
import {RuleScale} from "./rule-scale.tsx";
import {RuleThings} from "./rule-things.tsx";
import "../examine/examine.css";
import "./state.css";

export function RuleScreen() {
  const setting = useSetting<GradeRule>("grade-rule");
  return (
    <main className="examine measure">
      <p className="measure-of"><Link href="/rack">Rack</Link><span>{setting.value?.title}</span></p>
      <h1>How a grade is reached</h1>
      <p className="rule-words">Every flaw costs points by its kind and how bad it is; wear, dirt, alterations and missing parts cost theirs. The sum says the word. A few things cap it: with dry rot nothing is better than poor. The same flaws give the same grade, whoever notes them, in any order.</p>
      {setting.value ? <RuleForm key={JSON.stringify(setting.value)} setting={setting} value={setting.value} /> : <ProblemList problems={setting.problems} />}
    </main>
  );
}

function RuleForm({setting, value}: {readonly setting: OpenSetting<GradeRule>; readonly value: GradeRule}) {
  const [rule, setRule] = useState(value);
  const [saved, setSaved] = useState(false);
  const {fits, problems = []} = useMemo(() => checkShape(gradeRuleSchema, rule, (path) => printPath(path) || "the rule"), [rule]);
  const changed = !same(rule, value);
  const set = (part: Partial<GradeRule>) => (setSaved(false), setRule({...rule, ...part}));
  return (
    <>
      <div className="rule-ways">
        <Button look="main" disabled={!changed || !fits} onClick={() => void setting.save(rule).then(setSaved)}>Save the rule</Button>
        <Button disabled={!changed} onClick={() => setRule(value)}>Back to what is saved</Button>
        <Button disabled={same(rule, defaultRule)} onClick={() => set(defaultRule)}>The rule that came with ticking</Button>
        <span role="status" className="quiet">{saved ? "Saved: every garment is graded by it from now on." : changed ? "Not saved yet." : ""}</span>
      </div>
      <ProblemList problems={[...problems, ...setting.problems]} />
      <div className="rule-bench">
        <div>
          <Field label="Name of the rule">{(tie) => <input {...tie} maxLength={200} value={rule.title} onChange={({target}) => set({title: target.value})} />}</Field>
          <RuleScale rule={rule} onChange={set} />
          <RuleFlaws flaws={rule.flaws} onChange={(flaws) => set({flaws})} />
          <RulePlaces places={rule.places} onChange={(places) => set({places})} />
          <RuleThings title="Alterations" add="Another alteration" things={rule.alterations} onChange={(alterations) => set({alterations})} />
          <RuleThings title="Missing" add="Something else that can be missing" things={rule.missing} onChange={(missing) => set({missing})} />
          <p className="quiet">The points that came with ticking are common practice, no source. A grade is the shop's word, no certified appraisal.</p>
        </div>
        <RulePreview rule={fits ?? null} />
      </div>
    </>
  );
}
