// A rule book to be edited: its text with problems beside the lines, a garment of the rack dated by it as it is typed, and saving as a new edition.
import {useEffect, useMemo, useRef, useState} from "react";
import {Link, useLocation} from "wouter";
import {printMonth, monthOf, dayNumber, type Book, type Garment, type Problem} from "../../engine/index.ts";
import type {BookEdition, GarmentRecord, RackPage} from "../../store/model.ts";
import {getJson, problemsOf, sendJson} from "../api.ts";
import {forgetEngine} from "../engine/engine.ts";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {dropText, keepText, keptText} from "./book-draft.ts";
import type {ReadBook} from "./read-book.ts";
import {goToLine, LineEditor, lineOf} from "./line-editor.tsx";
import {newBook, renamed} from "./new-book.ts";
import {useBench} from "./use-bench.ts";
import "./book.css";

interface EditProps {
  /** "new" for one that is begun. */
  readonly id: string;
  /** A book to begin from. */
  readonly copy: string | null;
}

const now = new Date();
const today = printMonth(monthOf(dayNumber(now.getFullYear(), now.getMonth() + 1, 1)));

export function EditScreen({id, copy}: EditProps) {
  const [text, setText] = useState<string | null>(() => keptText(id));
  const [used, setUsed] = useState<readonly Book[]>([]);
  const [examples, setExamples] = useState<RackPage["rows"]>([]);
  const [example, setExample] = useState<Garment | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [, go] = useLocation();
  const box = useRef<HTMLTextAreaElement>(null);
  const fail = (error: unknown) => setProblems(problemsOf(error));

  useEffect(() => {
    getJson<readonly Book[]>("/api/books/used").then(setUsed, fail);
    getJson<RackPage>("/api/rack?limit=200&sort=number&descending=false").then(({rows}) => setExamples(rows), fail);
  }, []);
  useEffect(() => {
    if (text !== null || used.length === 0) return;
    const from = id === "new" ? copy : id;
    const book = used.find((one) => one.book === from);
    if (!book) return setText(newBook);
    getJson<ReadBook>(`/api/books/${book.book}/${book.edition}`).then(({yaml}) => setText(id === "new" ? renamed(yaml, `${book.book}-copy`) : yaml), fail);
  }, [used, id, copy, text]);

  const others = useMemo(() => used, [used]);
  const {answer, busy} = useBench({yaml: text ?? "", others, example, today});
  const wrong = text === null ? [] : (answer?.problems ?? []);
  const write = (next: string) => {
    setText(next);
    keepText(id, next);
  };
  const pick = (garment: string) => {
    if (garment === "") return setExample(null);
    getJson<GarmentRecord>(`/api/garments/${garment}`).then(({content}) => setExample(content.garment), fail);
  };
  const save = async () => {
    try {
      const {book, edition} = await sendJson<BookEdition>("POST", "/api/books", {yaml: text});
      dropText(id);
      forgetEngine();
      go(`/books/${book}/${edition}`);
    } catch (error) {
      fail(error);
    }
  };
  return (
    <main className="book edit">
      <p className="quiet"><Link href="/books">Rule books</Link></p>
      <h1>{id === "new" ? "A new book" : `Edit ${used.find(({book}) => book === id)?.title ?? id}`}</h1>
      <p className="quiet">What is typed is kept on this device. Saving makes a new edition; garments keep the edition they were dated with until they are dated again.</p>
      <ProblemList problems={problems} />
      <div className="edit-bench">
        {text === null ? <p className="quiet">Fetching …</p> : <LineEditor label="The book as YAML" text={text} marked={new Set(wrong.flatMap(({at}) => lineOf(at) ?? []))} onText={write} box={box} describedBy="book-wrong" />}
        <aside>
          <section id="book-wrong" aria-live="polite">
            <h2>{busy ? "Reading …" : wrong.length === 0 ? "Nothing to mend" : wrong.length === 1 ? "One thing to mend" : `${wrong.length} things to mend`}</h2>
            <ul className="to-mend">
              {wrong.slice(0, 30).map(({code, at, what, why, fix}, i) => (
                <li key={`${code}${i}`}>
                  {lineOf(at) !== null && <Button look="quiet" onClick={() => box.current && goToLine(box.current, lineOf(at)!)}>line {lineOf(at)}</Button>} {what}; {why}. To mend it: {fix}.
                </li>
              ))}
            </ul>
          </section>
          <section>
            <h2>Try it on a garment</h2>
            <select aria-label="Garment to try" defaultValue="" onChange={({target}) => pick(target.value)}>
              <option value="">none</option>
              {examples.map(({id: garment, number, title}) => <option key={garment} value={garment}>{`${number} ${title}`}</option>)}
            </select>
            {answer?.finding && <div className="tried" role="status">{answer.finding.sentences.map((sentence) => <p key={sentence}>{sentence}</p>)}</div>}
            <ProblemList problems={answer?.slips ?? []} />
          </section>
          <p><Button look="main" disabled={text === null || busy || wrong.length > 0} onClick={() => void save()}>Save as a new edition</Button></p>
        </aside>
      </div>
    </main>
  );
}
