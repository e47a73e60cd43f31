// What changed between two editions of a book, in sentences.
import {useEffect, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/index.ts";
import type {Change} from "../../rulebooks/compare.ts";
import {getJson, problemsOf} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import "./book.css";

export function CompareScreen({id, from, to}: {id: string; from: string; to: string}) {
  const [changes, setChanges] = useState<readonly Change[] | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    getJson<readonly Change[]>(`/api/books/${id}/compare/${from}/${to}`).then(setChanges, (error: unknown) => setProblems(problemsOf(error)));
  }, [id, from, to]);
  return (
    <main className="book">
      <p className="quiet"><Link href={`/books/${id}`}>{id}</Link></p>
      <h1>Edition {from} and {to}</h1>
      <ProblemList problems={problems} />
      {changes?.length === 0 && <p>They say the same.</p>}
      <ul className="changes">{changes?.map(({kind, says, path}, i) => <li key={`${path.join(".")} ${i}`}><b>{kind}</b> {says}</li>)}</ul>
    </main>
  );
}
