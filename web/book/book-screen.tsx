// One edition of a rule book, to be read: its note, its chart, every rule with window and source.
import {useEffect, useMemo, useRef, useState} from "react";
import {Link} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import {getJson, problemsOf} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {BookChart} from "./book-chart.tsx";
import type {ListedBook} from "./book-list-screen.tsx";
import {BookWays} from "./book-ways.tsx";
import type {ReadBook} from "./read-book.ts";
import {findIn, sectionsOf} from "./section.ts";
import {SectionView} from "./section-view.tsx";
import "./book.css";

/** @param edition  null: the one in use */
export function BookScreen({id, edition}: {id: string; edition: number | null}) {
  const [listed, setListed] = useState<ListedBook | null>(null);
  const [read, setRead] = useState<ReadBook | null>(null);
  const [words, setWords] = useState("");
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const place = useRef(location.hash.slice(1));

  useEffect(() => {
    let off = false;
    const load = async () => {
      const books = await getJson<readonly ListedBook[]>("/api/books");
      const one = books.find(({book}) => book === id) ?? null;
      const found = await getJson<ReadBook>(`/api/books/${encodeURIComponent(id)}/${edition ?? one?.edition ?? 1}`);
      if (off) return;
      setListed(one);
      setRead(found);
    };
    load().catch((error: unknown) => !off && setProblems(problemsOf(error)));
    return () => void (off = true);
  }, [id, edition]);

  // An address with a mark behind # was written before the book had come.
  useEffect(() => {
    if (!read || place.current === "") return;
    const section = document.getElementById(decodeURIComponent(place.current));
    section?.scrollIntoView({block: "start"});
    section?.focus({preventScroll: true});
    place.current = "";
  }, [read]);

  const sections = useMemo(() => (read ? sectionsOf(read.book) : []), [read]);
  const shown = words.trim() === "" ? sections : findIn(sections, words);
  const book = read?.book;

  return (
    <main className="book">
      <p className="quiet"><Link href="/books">Rule books</Link></p>
      <h1>{book?.title ?? "Reading …"}</h1>
      <ProblemList problems={problems} />
      {book && (
        <>
          <p className="quiet">{`Edition ${book.edition}${listed && book.edition !== listed.edition ? ` (in use: ${listed.edition})` : ", in use"}; ${book.kind === "public" ? "holds for every maker" : "one maker’s"}; ${book.covers.from.slice(0, 4)} to ${book.covers.until?.slice(0, 4) ?? "now"}`}</p>
          {book.note && <p className="book-note">{book.note}</p>}
          <BookWays read={read!} listed={listed} />
          <BookChart book={book} />
          <div className="book-find">
            <label className="search-box">
              <span className="unseen">Find a rule in this book</span>
              <input type="search" placeholder="Find a rule: a mark, a word, a source, a year …" value={words} onChange={({target}) => setWords(target.value)} />
            </label>
            <p role="status" className="quiet">{`${shown.length} of ${sections.length} marks and lists`}</p>
          </div>
          {shown.map((section) => <SectionView key={section.id} section={section} />)}
        </>
      )}
    </main>
  );
}
