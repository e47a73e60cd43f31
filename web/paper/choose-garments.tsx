// The garments that a paper is wanted of: those that are chosen, and others found by words.
import {useEffect, useState} from "react";
import type {Problem} from "../../engine/problem.ts";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {getJson, problemsOf} from "../api.ts";
import {idsOf} from "../rack/date-again.ts";
import {wholeRack} from "../rack/address.ts";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";

interface Named {
  readonly number: string;
  readonly title: string;
}

const patience = 180;
const shown = 12;

export function ChooseGarments({of, onChange}: {readonly of: readonly string[]; readonly onChange: (of: readonly string[]) => void}) {
  const [text, setText] = useState("");
  const [page, setPage] = useState<RackPage | null>(null);
  const [names, setNames] = useState<ReadonlyMap<string, Named>>(new Map());
  const [problems, setProblems] = useState<readonly Problem[]>([]);

  useEffect(() => {
    const asked = new AbortController();
    const timer = setTimeout(() => {
      getJson<RackPage>(`/api/rack?text=${encodeURIComponent(text)}&limit=${shown}`, asked).then(
        (found) => {
          setPage(found);
          setProblems([]);
          setNames((known) => new Map([...known, ...found.rows.map(({id, number, title, type}) => [id, {number, title: title || type}] as const)]));
        },
        (error: unknown) => asked.signal.aborted || setProblems(problemsOf(error)),
      );
    }, patience);
    return () => (clearTimeout(timer), asked.abort());
  }, [text]);

  // Garments that came with the address have not been found by words.
  const strange = of.slice(0, shown).filter((id) => !names.has(id)).join();
  useEffect(() => {
    for (const id of strange.split(",").filter((one) => one !== "")) {
      getJson<GarmentRecord>(`/api/garments/${id}`).then(
        ({content: {garment}}) => setNames((known) => new Map([...known, [id, {number: garment.garment, title: garment.title ?? garment.type ?? ""}]])),
        () => setNames((known) => new Map([...known, [id, {number: id, title: "not on the rack"}]])),
      );
    }
  }, [strange]);

  const all = async () => {
    try {
      onChange(await idsOf({...wholeRack.query, text}));
    } catch (error) {
      setProblems(problemsOf(error));
    }
  };
  const chosen = new Set(of);
  return (
    <section className="choose" aria-label="Garments">
      <h2>{of.length === 0 ? "Which garments" : `${of.length.toLocaleString()} ${of.length === 1 ? "garment" : "garments"}`}</h2>
      {of.length > 0 && (
        <ul className="chosen">
          {of.slice(0, shown).map((id) => (
            <li key={id}>
              <span><b>{names.get(id)?.number ?? "…"}</b> {names.get(id)?.title}</span>
              <Button look="quiet" aria-label={`Leave out ${names.get(id)?.number ?? id}`} onClick={() => onChange(of.filter((one) => one !== id))}>leave out</Button>
            </li>
          ))}
          {of.length > shown && <li className="quiet">and {(of.length - shown).toLocaleString()} more</li>}
        </ul>
      )}
      {of.length > 1 && <p><Button look="quiet" onClick={() => onChange([])}>Leave all out</Button></p>}
      <details className="choose-fold" open={of.length === 0 || matchMedia("(min-width: 800px)").matches}>
      <summary>Add from the rack</summary>
      <label className="choose-find">
        <span>Find on the rack</span>
        <input type="search" value={text} maxLength={200} placeholder="number, words, codes …" onChange={({target}) => setText(target.value)} />
      </label>
      <ProblemList problems={problems} />
      {page && (
        <ul className="found">
          {page.rows.filter(({id}) => !chosen.has(id)).slice(0, of.length > 0 && text === "" ? 4 : 8).map(({id, number, title, type}) => (
            <li key={id}><Button look="quiet" onClick={() => onChange([...of, id])}>{number} {title || type}</Button></li>
          ))}
        </ul>
      )}
      {page && page.total > 1 && <p><Button look="quiet" onClick={() => void all()}>{text === "" ? `Take all ${page.total.toLocaleString()} on the rack` : `Take all ${page.total.toLocaleString()} that fit`}</Button></p>}
      </details>
    </section>
  );
}
