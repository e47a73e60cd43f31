// A garment measured and looked over: its grade with the reasons, the tape at every point, flaws on the drawing, and whether it would fit.
import {useCallback, useMemo, useState} from "react";
import {Link, useLocation, useParams} from "wouter";
import {garmentKinds, kindNames, kindOf} from "../../state/garment-kind.ts";
import {gradeOf} from "../../state/grade.ts";
import {ConflictSheet} from "../examine/conflict-sheet.tsx";
import {useKeys} from "../examine/keys.tsx";
import {SavingNote} from "../examine/saving-note.tsx";
import {useGarment} from "../examine/use-garment.ts";
import {BarNote} from "../ui/bar-note.tsx";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {Cautions} from "./cautions.tsx";
import {FitSection} from "./fit-section.tsx";
import {FlawSection} from "./flaw-section.tsx";
import {GradeBand} from "./grade-band.tsx";
import {MeasureKeys} from "./measure-keys.tsx";
import {MeasureSection} from "./measure-section.tsx";
import {TagSection} from "./tag-section.tsx";
import {useGradeRule} from "./use-grade-rule.ts";
import {WearSection} from "./wear-section.tsx";
import {sizesOf, stateOf, withSizes, withState} from "./with-measure.ts";
import "../examine/examine.css";
import "./state.css";

export function MeasureScreen() {
  const {id = null} = useParams<{id?: string}>();
  const [, go] = useLocation();
  const open = useGarment(id, useCallback((hung: string) => go(`/measure/${hung}`, {replace: true}), [go]));
  const {content, change} = open;
  const {garment, state} = content;
  const rule = useGradeRule();
  const [keys, showKeys] = useState(false);
  const [later, setLater] = useState(false);
  const kind = kindOf(garment.type);
  const sizes = sizesOf(content);
  const graded = useMemo(() => (state ? gradeOf(state, rule) : null), [state, rule]);
  const nothing = () => undefined;
  useKeys({undo: () => open.undo?.(), redo: () => open.redo?.(), next: nothing, row: nothing, find: nothing, help: () => showKeys(true)});
  const back = open.id ? `/examine/${open.id}` : id ? `/examine/${id}` : "/examine";
  return (
    <main className="examine measure">
      <BarNote><SavingNote open={open} onKeys={() => showKeys(true)} /></BarNote>
      <ProblemList problems={open.problems} />
      <p className="measure-of">
        <Link href={back}>When was it made?</Link>
        <span>{garment.garment}{garment.title ? ` · ${garment.title}` : ""}</span>
        <label>
          <span className="quiet">drawn as</span>{" "}
          <select value={garment.type ?? ""} onChange={({target}) => change({...content, garment: {...garment, type: target.value || undefined}})}>
            {[...new Set(["", ...garmentKinds, "tee", garment.type ?? ""])].map((type) => <option key={type} value={type}>{type || `not said (${kindNames[kind]})`}</option>)}
          </select>
        </label>
      </p>
      {id === null && open.ready && <p className="hang-line"><Button look="main" onClick={open.hang}>Hang it on the rack</Button> <span className="quiet">Until then it is kept on this device.</span></p>}
      {open.ready && (
        <>
          <div className="measure-head">
            <GradeBand graded={graded} rule={rule} />
            <TagSection key={open.id ?? "blank"} kind={kind} sizes={sizes} state={state} onChange={(next) => change(withSizes(content, next))} onAlteration={(done) => change(withState(content, {alterations: [...stateOf(content).alterations, {kind: done, place: "", note: "by the tape"}]}))} />
          </div>
          <MeasureSection kind={kind} sizes={sizes} onChange={(next) => change(withSizes(content, next))} />
          <div className="state-bench">
            <FlawSection kind={kind} flaws={stateOf(content).flaws} rule={rule} graded={graded} onChange={(flaws) => change(withState(content, {flaws}))} />
            <WearSection state={stateOf(content)} rule={rule} onChange={(part) => change(withState(content, part))} />
          </div>
          <FitSection kind={kind} sizes={sizes} />
        </>
      )}
      <Cautions content={content} />
      {open.conflict && !later && <ConflictSheet conflict={open.conflict} mine={content} onSettle={open.settle} onClose={() => setLater(true)} />}
      {open.conflict && later && <p className="newer"><Button look="quiet" onClick={() => setLater(false)}>Somebody else saved this garment, too: put both together</Button></p>}
      {keys && <MeasureKeys onClose={() => showKeys(false)} />}
    </main>
  );
}
