// A dating sheet as it will be printed, on white paper by day and by night.
import {useEffect, useRef, useState} from "react";
import {ProblemList} from "../ui/problem-list.tsx";
import {Turn} from "./turn.tsx";
import {useText} from "./use-text.ts";

export function SheetPreview({of, photos, worth}: {readonly of: readonly string[]; readonly photos: number; readonly worth: boolean}) {
  const [at, setAt] = useState(0);
  const id = of[Math.min(at, of.length - 1)]!;
  const address = `/api/paper/sheet/${id}.html?photos=${photos}${worth ? "&worth=true" : ""}`;
  const {text, stale, problems} = useText(address);
  const style = useText("/api/paper/style.css");
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (text === null || style.text === null || !place.current) return;
    // In a tree of its own, so that neither look gets into the other.
    const tree = place.current.shadowRoot ?? place.current.attachShadow({mode: "open"});
    const look = new CSSStyleSheet();
    look.replaceSync(style.text);
    tree.adoptedStyleSheets = [look];
    const sheet = new DOMParser().parseFromString(text, "text/html").querySelector("main")!;
    const article = document.createElement("article");
    article.className = sheet.className;
    article.append(...sheet.childNodes);
    tree.replaceChildren(article);
  }, [text, style.text]);
  return (
    <div aria-busy={stale}>
      <Turn at={at} of={of.length} onTurn={setAt} />
      <ProblemList problems={[...problems, ...style.problems]} />
      {text === null && problems.length === 0 && <p className="quiet" role="status">Put together …</p>}
      <div ref={place} className={stale || text === null || style.text === null ? "sheet-place stale" : "sheet-place ready"} />
      <p className="paper-open"><a href={address} target="_blank" rel="noopener">Open this sheet by itself, to print it from the browser</a></p>
    </div>
  );
}
