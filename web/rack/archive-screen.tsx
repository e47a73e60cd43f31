// The whole rack in one file, and back from it; and a rack to start with.
import {useState, type ChangeEvent} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import {problemsOf, sendFile, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import "./rack.css";

export function ArchiveScreen() {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [said, setSaid] = useState("");
  const [busy, setBusy] = useState(false);
  const [sure, setSure] = useState(false);

  const run = (work: Promise<unknown>, done: string) => {
    setBusy(true);
    setSaid("");
    work
      .then(() => {
        setProblems([]);
        setSaid(done);
      })
      .catch((error: unknown) => setProblems(problemsOf(error)))
      .finally(() => setBusy(false));
  };
  const restore = ({target}: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file) run(sendFile("/api/archive", file), "Everything in the archive is on the rack now.");
    target.value = "";
  };

  return (
    <main className="archive">
      <p className="quiet"><Link href="/rack">Rack</Link></p>
      <h1>Archive</h1>
      <p role="status" className={said ? "done" : "quiet"}>{busy ? "Working …" : said || "Garments with their history, photos as they were taken, and your rule books, in one file."}</p>
      <ProblemList problems={problems} />
      <section>
        <h2>Take it along</h2>
        <p>One file that holds everything. Keep it somewhere else than this machine.</p>
        <p><a className="button main" href="/api/archive" download>Download the archive</a></p>
      </section>
      <section>
        <h2>Bring it back</h2>
        <p>Into an empty rack, here or elsewhere: every garment, step, photo and book as it was.</p>
        <label>Archive file<input type="file" accept=".zip,application/zip" disabled={busy} onChange={restore} /></label>
      </section>
      <section>
        <h2>Start with an empty rack</h2>
        <p>What is on the rack now is moved away; a copy stays in the data folder, under backup.</p>
        <label className="narrow-tick"><input type="checkbox" checked={sure} onChange={({target}) => setSure(target.checked)} />Yes, clear this rack</label>
        <p className="panel-line">
          <button type="button" className="plain" disabled={!sure || busy} onClick={() => run(sendJson("POST", "/api/rack/empty", {keep: "nothing"}), "The rack is empty.")}>Empty rack</button>
          <button type="button" className="plain" disabled={!sure || busy} onClick={() => run(sendJson("POST", "/api/rack/empty", {keep: "demo"}), "The demo is on the rack.")}>Rack with the demo</button>
        </p>
      </section>
    </main>
  );
}
