// The windows of a book as a time chart: a picture, so that nothing a book says can run; each rule also stands below in words.
import {useMemo, useRef, useState} from "react";
import type {Book} from "../../engine/rule/schema.ts";
import {chartBook} from "../../rulebooks/chart.ts";
import {datedRules} from "../../rulebooks/dated-rules.ts";
import {useWidth} from "../rack/use-width.ts";
import {saveFile} from "./save-file.ts";

const thisYear = new Date().getFullYear();

export function BookChart({book}: {book: Book}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = Math.max(480, Math.min(6000, useWidth(frame, 960)));
  const span = useMemo(() => spanOf(book), [book]);
  const [years, setYears] = useState(span);
  const [part, setPart] = useState("");
  const parts = useMemo(() => partsOf(book), [book]);
  const svg = useMemo(
    () => chartBook(book, {from: `${Math.min(...years)}-01`, until: `${Math.max(...years)}-12`, width, only: part === "" ? undefined : [part]}),
    [book, years, width, part],
  );
  const setYear = (i: 0 | 1, text: string) => /^[12]\d{3}$/.test(text) && setYears(i === 0 ? [Number(text), years[1]] : [years[0], Number(text)]);
  return (
    <details className="book-chart" open>
      <summary><h2>Chart of windows</h2></summary>
      <div className="book-chart-set">
        <label>from <input key={`a${span[0]}`} inputMode="numeric" size={4} maxLength={4} defaultValue={years[0]} onChange={({target}) => setYear(0, target.value)} /></label>
        <label>until <input key={`b${span[1]}`} inputMode="numeric" size={4} maxLength={4} defaultValue={years[1]} onChange={({target}) => setYear(1, target.value)} /></label>
        <label>
          showing
          <select value={part} onChange={({target}) => setPart(target.value)}>
            <option value="">everything</option>
            {parts.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
          </select>
        </label>
        <button type="button" className="plain" onClick={() => saveFile(`${book.book}-chart.svg`, svg, "image/svg+xml")}>Take out as SVG</button>
      </div>
      <div ref={frame} className="book-chart-sheet" tabIndex={0} role="group" aria-label="Chart">
        <img src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`} alt={`Time chart of ${book.title}: when each of its marks was in use. The same stands below in words.`} width={width} />
      </div>
    </details>
  );
}

/** The years in which windows of the book begin or end, a little room on both sides. */
function spanOf(book: Book): readonly [number, number] {
  const years = datedRules(book).flatMap(({window: {begins, ends}}) => [...(begins ?? []), ...(ends ?? [])].map((month) => Number(month.slice(0, 4))));
  const last = book.covers.until ? Number(book.covers.until.slice(0, 4)) : thisYear;
  return [Math.max(1860, Math.min(Number(book.covers.from.slice(0, 4)), ...years) - 1), Math.min(thisYear, Math.max(last, ...years) + 1)];
}

function partsOf(book: Book): [string, string][] {
  const lists: [string, string][] = [["labels", "labels"], ["schemes", "how dates were written"], ["plants", "plants"], ["lots", "lots"], ["fabrics", "fabrics"]];
  const rules = datedRules(book);
  const tops = new Set(rules.map(({path: [top]}) => String(top)));
  const marks = new Set(rules.flatMap(({path: [top, id]}) => (top === "marks" ? [String(id)] : [])));
  // Books of many marks are cut by the first two words of their names: us.care, us.fibre.
  const families = new Set([...marks].map((id) => id.split(".").slice(0, 2).join(".")));
  const named = marks.size > 40 ? [...families].map((id): [string, string] => [id, id]) : [...marks].map((id): [string, string] => [id, book.marks[id]!.name]);
  return [...lists.filter(([id]) => tops.has(id)), ...named];
}
