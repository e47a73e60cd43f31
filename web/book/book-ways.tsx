// What can be done with an edition: edit, copy, take out, read another one, compare two.
import {Link, useLocation} from "wouter";
import type {ListedBook} from "./book-list-screen.tsx";
import type {ReadBook} from "./read-book.ts";
import {saveFile} from "./save-file.ts";

export function BookWays({read: {book, yaml}, listed}: {read: ReadBook; listed: ListedBook | null}) {
  const [, go] = useLocation();
  const others = (listed?.editions ?? []).filter((edition) => edition !== book.edition);
  return (
    <nav className="book-ways" aria-label="This book">
      <Link href={`/books/${book.book}/edit`}>Edit</Link>
      <Link href={`/books/new/edit?copy=${book.book}`}>Copy into a new book</Link>
      <button type="button" className="plain" onClick={() => saveFile(`${book.book}-${book.edition}.yaml`, yaml, "text/yaml")}>Take out as YAML</button>
      {others.length > 0 && (
        <label>
          another edition
          <select value="" onChange={({target}) => go(`/books/${book.book}/${target.value}`)}>
            <option value="">choose</option>
            {others.map((edition) => <option key={edition} value={edition}>{`edition ${edition}`}</option>)}
          </select>
        </label>
      )}
      {others.length > 0 && (
        <label>
          compare with
          <select value="" onChange={({target}) => go(`/books/${book.book}/compare/${[Number(target.value), book.edition].sort((a, b) => a - b).join("/")}`)}>
            <option value="">choose</option>
            {others.map((edition) => <option key={edition} value={edition}>{`edition ${edition}`}</option>)}
          </select>
        </label>
      )}
    </nav>
  );
}
