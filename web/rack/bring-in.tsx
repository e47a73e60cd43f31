// Brings a list in: a file or pasted text, what its columns mean, what has to be mended, and then all of it or nothing. The same for garments and for sales.
import {useEffect, useState, type ChangeEvent, type ReactNode} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import {problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {ColumnTable, type Column, type TargetGroup} from "./column-table.tsx";
import "./rack.css";

type Format = "csv" | "json" | "jsonl";

interface Given {
  readonly name: string;
  readonly format: Format;
  readonly text: string;
}

interface Tried<Row> {
  readonly columns?: readonly Column[];
  readonly ready: number;
  readonly problems: readonly Problem[];
  readonly rows: readonly Row[];
  readonly ids: readonly string[];
}

export interface BringInProps<Row> {
  /** Where the list goes. */
  readonly path: string;
  readonly back: {readonly href: string; readonly name: string; readonly to: string};
  readonly title: string;
  readonly about: string;
  /** Shown in the empty box: a table of two lines. */
  readonly example: string;
  /** "12 garments" */
  readonly count: (many: number) => string;
  /** Said after "12 garments brought in". */
  readonly then: string;
  /** What a column can be taken as. */
  readonly groups: readonly TargetGroup[];
  /** Guesses for the columns that do not speak for themselves. */
  readonly guess: (columns: readonly Column[]) => Record<string, string>;
  readonly preview: (rows: readonly Row[], ready: number) => ReactNode;
  /** What else is asked of a table, and what is sent of it. */
  readonly habits?: {readonly sent: Readonly<Record<string, string>>; readonly controls: ReactNode};
}

const most = 64_000_000;

export function BringIn<Row>({path, back, title, about, example, count, then, groups, guess, preview, habits}: BringInProps<Row>) {
  const [given, setGiven] = useState<Given | null>(null);
  const [mapping, setMapping] = useState<Readonly<Record<string, string>> | null>(null);
  const [currency, setCurrency] = useState(localStorage.getItem("ticking.currency") ?? "USD");
  const [tried, setTried] = useState<Tried<Row> | null>(null);
  const [done, setDone] = useState<number | null>(null);
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);

  const sent = JSON.stringify(habits?.sent ?? {});
  useEffect(() => {
    if (!given || !/^[A-Z]{3}$/.test(currency)) return;
    let off = false;
    setBusy(true);
    ask<Row>(path, given, mapping ?? {}, currency, sent, true)
      .then((answer) => {
        if (off) return;
        // The first look tells which columns do not speak for themselves; the second has our guesses for them.
        if (mapping === null && answer.columns?.some(({target}) => target === null)) setMapping(guess(answer.columns));
        setTried(answer);
        setProblems([]);
      })
      .catch((error: unknown) => !off && setProblems(problemsOf(error)))
      .finally(() => !off && setBusy(false));
    return () => void (off = true);
  }, [path, guess, given, mapping, currency, sent]);

  const take = (name: string, text: string) => {
    setDone(null);
    setTried(null);
    // The same columns mean the same when only what stands in them was mended.
    if (given?.text.split("\n", 1)[0] !== text.split("\n", 1)[0]) setMapping(null);
    setProblems(text.length > most ? [tooLong] : []);
    setGiven(text.trim() === "" || text.length > most ? null : {name, format: formatOf(name, text), text});
  };
  const choose = ({target}: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file) void file.text().then((text) => take(file.name, text));
  };
  const bringIn = () => {
    setBusy(true);
    ask<Row>(path, given!, mapping ?? {}, currency, sent, false)
      .then(({ids}) => {
        setDone(ids.length);
        setGiven(null);
        setTried(null);
      })
      .catch((error: unknown) => setProblems(problemsOf(error)))
      .finally(() => setBusy(false));
  };
  const ready = tried && tried.problems.length === 0 ? tried.ready : 0;

  return (
    <main className="bring-in">
      <p className="quiet"><Link href={back.href}>{back.name}</Link></p>
      <h1>{title}</h1>
      <p>{about} Nothing is saved before you have seen it, and then all of it or nothing.</p>
      {done !== null && <p role="status" className="done">{`${count(done)} brought in${then} `}<Link href={back.href}>{back.to}</Link></p>}
      <div className="bring-in-ways">
        <label>From a file<input type="file" accept=".csv,.tsv,.txt,.json,.jsonl,.ndjson,text/csv,application/json" onChange={choose} /></label>
        <label>Or pasted here<textarea rows={5} spellCheck={false} placeholder={example} onChange={({target}) => take("", target.value)} /></label>
      </div>
      <ProblemList problems={problems} />
      {tried?.columns && <ColumnTable columns={tried.columns} groups={groups} mapping={mapping ?? {}} onMapping={setMapping} />}
      {tried?.columns && (
        <label className="bring-in-currency">Amounts without a currency are in <input value={currency} size={4} maxLength={3} onChange={({target}) => setCurrency(target.value.toUpperCase())} /></label>
      )}
      {tried?.columns && habits?.controls}
      {tried && tried.problems.length > 0 && (
        <section aria-label="To be mended">
          <h2>{`${tried.problems.length} ${tried.problems.length === 1 ? "thing has" : "things have"} to be mended first`}</h2>
          <ProblemList problems={tried.problems.slice(0, 100)} />
          {tried.problems.length > 100 && <p className="quiet">{`and ${tried.problems.length - 100} more`}</p>}
        </section>
      )}
      {tried && tried.rows.length > 0 && preview(tried.rows, tried.ready)}
      {tried && (
        <p className="panel-line">
          <button type="button" className="main" disabled={busy || ready === 0} onClick={bringIn}>{ready > 0 ? `Bring in ${count(ready)}` : "Nothing to bring in yet"}</button>
          <span role="status" className="quiet">{busy ? "Reading …" : ""}</span>
        </p>
      )}
    </main>
  );
}

const ask = <Row,>(path: string, {format, text}: Given, mapping: Readonly<Record<string, string>>, currency: string, sent: string, trial: boolean) =>
  sendJson<Tried<Row>>("POST", path, {format, text, currency, try: trial, ...(JSON.parse(sent) as object), ...(format === "csv" ? {mapping} : {})});

/** What a file is by its name, and pasted text by how it begins. */
function formatOf(name: string, text: string): Format {
  const ending = /\.(\w+)$/.exec(name)?.[1]?.toLowerCase();
  if (ending === "jsonl" || ending === "ndjson") return "jsonl";
  if (ending === "json") return "json";
  const begin = text.trimStart();
  if (ending === undefined && begin.startsWith("{") && /\}\s*\n\s*\{/.test(begin)) return "jsonl";
  return ending === undefined && /^[[{]/.test(begin) ? "json" : "csv";
}

const tooLong: Problem = {code: "bring-in/too-long", at: "the list", what: "it holds more than 64 million characters", why: "that is more than can be read in one go", fix: "cut it into several files, each with the line of names"};
