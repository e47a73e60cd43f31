// The rule books in use, a search through all their rules, and ways to begin a book of one's own.
import {useEffect, useState, type ChangeEvent} from "react";
import {Link, useLocation} from "wouter";
import type {Problem} from "../../engine/problem.ts";
import type {Book} from "../../engine/rule/schema.ts";
import {getJson, problemsOf} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {keepText} from "./book-draft.ts";
import {findIn, sectionsOf} from "./section.ts";
import {SectionView} from "./section-view.tsx";
import "./book.css";

export interface ListedBook {
  readonly book: string;
  readonly title: string;
  readonly edition: number;
  readonly own: boolean;
  readonly kind: "public" | "maker";
  readonly rules: number;
  readonly marks: number;
  readonly sources: number;
  readonly fromMemory: number;
  readonly from: string;
  readonly until: string | null;
  readonly editions: readonly number[];
}

export function BookListScreen() {
  const [books, setBooks] = useState<readonly ListedBook[] | null>(null);
  const [used, setUsed] = useState<readonly Book[] | null>(null);
  const [words, setWords] = useState("");
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [, go] = useLocation();
  useEffect(() => {
    getJson<readonly ListedBook[]>("/api/books").then(setBooks, (error: unknown) => setProblems(problemsOf(error)));
  }, []);
  useEffect(() => {
    if (words !== "" && !used) getJson<readonly Book[]>("/api/books/used").then(setUsed, (error: unknown) => setProblems(problemsOf(error)));
  }, [words, used]);

  const open = ({target}: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (!file) return;
    void file.text().then((text) => {
      keepText("new", text);
      go("/books/new/edit");
    });
  };

  return (
    <main className="books">
      <header className="books-head">
        <div>
          <p className="quiet">What every date rests on</p>
          <h1>Rule books</h1>
        </div>
        <p className="books-ways">
          <Link href="/books/new/edit" className="button">Begin a book</Link>
          <label className="button">Open a YAML file<input type="file" className="unseen" accept=".yaml,.yml,text/yaml" onChange={open} /></label>
        </p>
      </header>
      <ProblemList problems={problems} />
      <ul className="book-list">
        {books?.map((one) => (
          <li key={one.book}>
            <h2><Link href={`/books/${one.book}`}>{one.title}</Link></h2>
            <p>{one.kind === "public" ? "Public: holds for every maker" : one.own ? "A maker’s, your own edition" : "A maker’s, as it came with the tool"}, edition {one.edition}</p>
            <p className="quiet">
              {`${one.rules} dated rules on ${one.marks} marks, ${one.from.slice(0, 4)} to ${one.until?.slice(0, 4) ?? "now"}, from ${one.sources} sources${one.fromMemory > 0 ? `; ${one.fromMemory} from memory` : ""}`}
            </p>
          </li>
        ))}
      </ul>
      <label className="search-box">
        <span className="unseen">Find a rule in any book</span>
        <input type="search" placeholder="Find a rule in any book: zip, union, symbols …" value={words} onChange={({target}) => setWords(target.value)} />
      </label>
      {words.trim() !== "" && used && <Found books={used} words={words} />}
    </main>
  );
}

function Found({books, words}: {books: readonly Book[]; words: string}) {
  const found = books.flatMap((book) => findIn(sectionsOf(book), words).map((section) => ({book, section})));
  return (
    <section aria-label="Rules found">
      <p role="status" className="quiet">{found.length === 0 ? "No rule speaks of that." : `${found.length} ${found.length === 1 ? "mark" : "marks"}`}</p>
      {found.slice(0, 40).map(({book, section}) => (
        <SectionView key={`${book.book} ${section.id}`} section={section} from={<Link href={`/books/${book.book}#${section.id}`}>{book.title}</Link>} />
      ))}
      {found.length > 40 && <p className="quiet">{`and ${found.length - 40} more: say a word more`}</p>}
    </section>
  );
}
