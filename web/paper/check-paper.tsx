// Whether a printed sheet still says what is kept, or what a file says that came with it.
import {useState, type FormEvent} from "react";
import type {Problem} from "../../engine/problem.ts";
import {problemsOf, sendJson} from "../api.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {ProblemList} from "../ui/problem-list.tsx";

interface Checked {
  readonly result: "same" | "once" | "differs";
  readonly words: string;
  readonly garment: {readonly id: string | null; readonly number: string};
  readonly on: string;
}

const heads = {same: "They say the same", once: "They said the same then", differs: "They do not say the same"} as const;

export function CheckPaper() {
  const [code, setCode] = useState("");
  const [number, setNumber] = useState("");
  const [on, setOn] = useState("");
  const [file, setFile] = useState<{readonly name: string; readonly record: unknown} | null>(null);
  const [answer, setAnswer] = useState<Checked | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const whole = code.trim().startsWith("ticking:");
  const check = async (event: FormEvent) => {
    event.preventDefault();
    setAnswer(null);
    setProblems([]);
    try {
      setAnswer(await sendJson<Checked>("POST", "/api/paper/check", {code, ...(whole ? {} : {number, ...(on ? {on} : {})}), ...(file ? {record: file.record} : {})}));
    } catch (error) {
      setProblems(problemsOf(error));
    }
  };
  const take = async (given: File | undefined) => {
    setProblems([]);
    if (!given) return setFile(null);
    try {
      setFile({name: given.name, record: JSON.parse(await given.text())});
    } catch {
      setFile(null);
      setProblems([{code: "paper/not-record", at: given.name, what: "this is no file that ticking wrote", why: "the sheet cannot be compared with it", fix: "give an export of the rack as JSON"}]);
    }
  };
  return (
    <form className="check-paper" onSubmit={(event) => void check(event)}>
      <p>Scan the square code of a dating sheet into the field, or type the twelve letters and figures below it.</p>
      <Field label="Code of the sheet">{(tie) => <input {...tie} value={code} maxLength={4000} autoComplete="off" spellCheck={false} onChange={({target}) => setCode(target.value)} />}</Field>
      {!whole && (
        <div className="check-beside">
          <Field label="Garment’s number">{(tie) => <input {...tie} value={number} maxLength={100} onChange={({target}) => setNumber(target.value)} />}</Field>
          <Field label="Day of the sheet">{(tie) => <input {...tie} type="date" value={on} onChange={({target}) => setOn(target.value)} />}</Field>
        </div>
      )}
      <Field label="Compare with a file instead of the rack" hint="An export of a rack as JSON.">{(tie) => <input {...tie} type="file" accept=".json,application/json" onChange={({target}) => void take(target.files?.[0])} />}</Field>
      <p><Button type="submit" look="main" disabled={code.trim() === ""}>Check the sheet</Button></p>
      <ProblemList problems={problems} />
      <div role="status">
        {answer && (
          <div className={`checked ${answer.result}`}>
            <h2>{heads[answer.result]}</h2>
            <p>{answer.words}</p>
            <p className="quiet">Sheet of {answer.garment.number}, {answer.on}.{answer.garment.id && <> <a href={`/examine/${answer.garment.id}`}>To the garment</a></>}</p>
          </div>
        )}
      </div>
    </form>
  );
}
