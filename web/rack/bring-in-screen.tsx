// Brings a list of garments in: a file or pasted text, what its columns mean, what has to be mended, and then all of it or nothing.
import {useEffect, useState, type ChangeEvent} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import type {Content} from "../../store/model.ts";
import {problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {ColumnTable} from "./column-table.tsx";
import {guessColumns} from "./guess-column.ts";
import {PreviewTable} from "./preview-table.tsx";
import {sayGarments} from "./say.ts";
import "./rack.css";

type Format = "csv" | "json" | "jsonl";

interface Given {
  readonly name: string;
  readonly format: Format;
  readonly text: string;
}

export interface Tried {
  readonly columns?: readonly {readonly name: string; readonly target: string | null; readonly samples: readonly string[]}[];
  readonly ready: number;
  readonly problems: readonly Problem[];
  readonly rows: readonly {readonly line: number; readonly content: Content}[];
  readonly ids: readonly string[];
}

const most = 64_000_000;

export function BringInScreen() {
  const [given, setGiven] = useState<Given | null>(null);
  const [mapping, setMapping] = useState<Readonly<Record<string, string>> | null>(null);
  const [currency, setCurrency] = useState(localStorage.getItem("ticking.currency") ?? "USD");
  const [tried, setTried] = useState<Tried | null>(null);
  const [done, setDone] = useState<number | null>(null);
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);

  useEffect(() => {
    if (!given || !/^[A-Z]{3}$/.test(currency)) return;
    let off = false;
    setBusy(true);
    ask(given, mapping ?? {}, currency, true)
      .then((answer) => {
        if (off) return;
        // The first look tells which columns do not speak for themselves; the second has our guesses for them.
        if (mapping === null && answer.columns?.some(({target}) => target === null)) setMapping(guessColumns(answer.columns));
        setTried(answer);
        setProblems([]);
      })
      .catch((error: unknown) => !off && setProblems(problemsOf(error)))
      .finally(() => !off && setBusy(false));
    return () => void (off = true);
  }, [given, mapping, currency]);

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
    ask(given!, mapping ?? {}, currency, false)
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
      <p className="quiet"><Link href="/rack">Rack</Link></p>
      <h1>Bring in a list</h1>
      <p>A table (CSV) with a line of names, JSON, or JSON with one garment a line. Nothing is saved before you have seen it, and then all of it or nothing.</p>
      {done !== null && <p role="status" className="done">{`${sayGarments(done)} brought in; dates are being worked out. `}<Link href="/rack">To the rack</Link></p>}
      <div className="bring-in-ways">
        <label>From a file<input type="file" accept=".csv,.tsv,.txt,.json,.jsonl,.ndjson,text/csv,application/json" onChange={choose} /></label>
        <label>Or pasted here<textarea rows={5} spellCheck={false} placeholder={"number,title,kept\n0501,Chore coat,bench"} onChange={({target}) => take("", target.value)} /></label>
      </div>
      <ProblemList problems={problems} />
      {tried?.columns && <ColumnTable columns={tried.columns} mapping={mapping ?? {}} onMapping={setMapping} />}
      {tried?.columns && (
        <label className="bring-in-currency">Amounts without a currency are in <input value={currency} size={4} maxLength={3} onChange={({target}) => setCurrency(target.value.toUpperCase())} /></label>
      )}
      {tried && tried.problems.length > 0 && (
        <section aria-label="To be mended">
          <h2>{`${tried.problems.length} ${tried.problems.length === 1 ? "thing has" : "things have"} to be mended first`}</h2>
          <ProblemList problems={tried.problems.slice(0, 100)} />
          {tried.problems.length > 100 && <p className="quiet">{`and ${tried.problems.length - 100} more`}</p>}
        </section>
      )}
      {tried && tried.rows.length > 0 && <PreviewTable rows={tried.rows} ready={tried.ready} />}
      {tried && (
        <p className="panel-line">
          <button type="button" className="main" disabled={busy || ready === 0} onClick={bringIn}>{ready > 0 ? `Bring in ${sayGarments(ready)}` : "Nothing to bring in yet"}</button>
          <span role="status" className="quiet">{busy ? "Reading …" : ""}</span>
        </p>
      )}
    </main>
  );
}

const ask = ({format, text}: Given, mapping: Readonly<Record<string, string>>, currency: string, trial: boolean) =>
  sendJson<Tried>("POST", "/api/rack/import", {format, text, currency, try: trial, ...(format === "csv" ? {mapping} : {})});

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
