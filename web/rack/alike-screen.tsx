// Garments that are likely on the rack twice, side by side, each with a way to look closer or to take one off.
import {useCallback, useEffect, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import type {GarmentRecord, RackRow} from "../../store/model.ts";
import {getJson, problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {Cover} from "./cover.tsx";
import "./rack.css";

interface Alike {
  readonly ids: readonly string[];
  readonly why: string;
  readonly likeness: number;
}

const atOnce = 20;

export function AlikeScreen() {
  const [groups, setGroups] = useState<readonly Alike[] | null>(null);
  const [shown, setShown] = useState(atOnce);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const load = useCallback(() => getJson<readonly Alike[]>("/api/rack/duplicates").then(setGroups, (error: unknown) => setProblems(problemsOf(error))), []);
  useEffect(() => void load(), [load]);

  return (
    <main className="alike">
      <p className="quiet"><Link href="/rack">Rack</Link></p>
      <h1>Look-alikes</h1>
      <p role="status">{groups === null ? "Comparing …" : groups.length === 0 ? "No two garments on the rack look like one and the same." : `${groups.length} ${groups.length === 1 ? "group" : "groups"} that may be one garment entered twice, the likeliest first.`}</p>
      <ProblemList problems={problems} />
      {groups?.slice(0, shown).map((group) => <Group key={group.ids.join()} group={group} onChanged={load} onProblems={setProblems} />)}
      {groups && groups.length > shown && <p><button type="button" className="plain" onClick={() => setShown(shown + atOnce)}>{`Show ${Math.min(atOnce, groups.length - shown)} more`}</button></p>}
    </main>
  );
}

function Group({group, onChanged, onProblems}: {group: Alike; onChanged: () => void; onProblems: (problems: readonly Problem[]) => void}) {
  const [records, setRecords] = useState<readonly GarmentRecord[]>([]);
  useEffect(() => {
    Promise.all(group.ids.map((id) => getJson<GarmentRecord>(`/api/garments/${id}`))).then(setRecords, (error: unknown) => onProblems(problemsOf(error)));
  }, [group, onProblems]);
  const remove = ({id, rev}: GarmentRecord) => sendJson("DELETE", `/api/garments/${id}?base=${rev}`).then(onChanged, (error: unknown) => onProblems(problemsOf(error)));
  return (
    <section className="alike-group" aria-label={group.why}>
      <p><b>{`${Math.round(group.likeness * 100)} in 100`}</b> <span>{group.why}</span></p>
      <ul>
        {records.map((record) => {
          const {garment, dating, place, photos} = record.content;
          return (
            <li key={record.id}>
              <Cover row={{title: garment.title ?? "", number: garment.garment, type: garment.type ?? "", cover: photos[0]?.photo ?? null} satisfies Pick<RackRow, "title" | "number" | "type" | "cover">} />
              <Link href={`/examine/${record.id}`}><span className="code">{garment.garment}</span> {garment.title}</Link>
              <span>{dating?.words ?? "not dated yet"}</span>
              <span className="quiet">{[place, sayMarks(Object.keys(garment.saw).length), `entered ${new Date(record.createdAt).toLocaleDateString()}`].filter(Boolean).join(" · ")}</span>
              <button type="button" className="plain" onClick={() => void remove(record)}>Take this one off the rack</button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const sayMarks = (count: number) => (count === 1 ? "one mark" : `${count} marks`);
