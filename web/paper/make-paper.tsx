// Has a paper made and hands it over: at once for a few garments, with its progress told for many.
import {useRef, useState} from "react";
import type {Problem} from "../../engine/problem.ts";
import {ApiFault, problemsOf, sendForLines, who} from "../api.ts";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import type {Wish} from "./address.ts";

/** More than these are made with progress. */
const atOnce = 8;

type Line = {readonly done: number; readonly of: number} | {readonly file: string; readonly bytes: number; readonly problems: readonly Problem[]};

export function MakePaper({wish}: {readonly wish: Wish}) {
  const [done, setDone] = useState<{readonly done: number; readonly of: number} | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [said, say] = useState("");
  const stop = useRef<AbortController | null>(null);
  const {what, of, size, photos, worth, format, code, price, form} = wish;
  const make = async () => {
    setProblems([]);
    say("");
    setDone({done: 0, of: of.length});
    stop.current = new AbortController();
    try {
      if (of.length <= atOnce && what !== "listing") {
        await handOver(await fetchPaper(`/api/paper/${what}`, what === "sheet" ? {ids: of, size, photos, worth} : {ids: of, size, format, code, price}, stop.current.signal));
      } else {
        for await (const line of sendForLines<Line>("/api/paper/batch", {what, ids: of, size: size ?? "a4", photos, worth, format, code, price, form}, {signal: stop.current.signal})) {
          if ("done" in line) setDone(line);
          else {
            setProblems(line.problems);
            follow(`/api/paper/file/${line.file}`, line.file);
          }
        }
      }
      say("Made, and handed to your downloads.");
    } catch (error) {
      stop.current.signal.aborted ? say("Stopped; nothing was made.") : setProblems(problemsOf(error));
    }
    setDone(null);
  };
  const name = what === "sheet" ? (of.length === 1 ? "the sheet" : `${of.length.toLocaleString()} sheets`) : what === "tags" ? (of.length === 1 ? "the tag" : `${of.length.toLocaleString()} tags`) : `${of.length.toLocaleString()} listings as one file`;
  return (
    <section className="make" aria-label="Make it">
      {done === null ? (
        <Button look="main" disabled={of.length === 0} onClick={() => void make()}>{of.length === 0 ? "Nothing chosen yet" : what === "listing" ? `Make ${name}` : `Make ${name} as PDF`}</Button>
      ) : (
        <>
          <progress value={done.done} max={done.of} aria-label="Made so far" />
          <p role="status">{done.of > atOnce ? `${done.done.toLocaleString()} of ${done.of.toLocaleString()}` : "Making it …"} <Button look="quiet" onClick={() => stop.current?.abort()}>Stop</Button></p>
        </>
      )}
      <p role="status" className="quiet">{said}</p>
      {problems.length > 0 && <ProblemList problems={problems} />}
    </section>
  );
}

async function fetchPaper(path: string, body: object, signal: AbortSignal): Promise<Response> {
  const response = await fetch(path, {method: "POST", headers: {...who(), "content-type": "application/json"}, body: JSON.stringify(body), signal});
  if (response.ok) return response;
  const given = (await response.json().catch(() => null)) as {problems?: readonly Problem[]} | null;
  throw new ApiFault(response.status, given?.problems ?? [], given);
}

async function handOver(response: Response): Promise<void> {
  const name = /filename="([^"]+)"/.exec(response.headers.get("content-disposition") ?? "")?.[1] ?? "paper.pdf";
  const address = URL.createObjectURL(await response.blob());
  follow(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

function follow(address: string, name: string): void {
  Object.assign(document.createElement("a"), {href: address, download: name}).click();
}
