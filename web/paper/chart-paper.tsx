// The wall chart of a rule book: which book, how large.
import {useBooks} from "../engine/use-finding.ts";
import {Field} from "../ui/field.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import type {Wish} from "./address.ts";

export function ChartPaper({wish, onChange}: {readonly wish: Wish; readonly onChange: (part: Partial<Wish>) => void}) {
  const {books, problems} = useBooks();
  const book = books.find((one) => one.book === wish.book) ?? books.find(({kind}) => kind === "maker") ?? books[0];
  const address = book ? `/api/paper/chart/${book.book}?size=${wish.chart}` : "";
  return (
    <section className="chart-paper" aria-label="Wall chart">
      <ProblemList problems={problems} />
      <Field label="Rule book">{(tie) => <select {...tie} value={book?.book ?? ""} onChange={({target}) => onChange({book: target.value})}>{books.map((one) => <option key={one.book} value={one.book}>{one.title}</option>)}</select>}</Field>
      <Field label="Page">{(tie) => <select {...tie} value={wish.chart} onChange={({target}) => onChange({chart: target.value as Wish["chart"]})}><option value="a3">A3, 297 × 420 mm</option><option value="a2">A2, 420 × 594 mm</option></select>}</Field>
      <p>On the chart: each label and detail with the time it was in use, how dates were written with specimens, what stands where on a label, and where to look first. It is drawn in lines and type, so that it stays sharp at any size.</p>
      {book && <p className="listing-ways"><a className="as-button" href={address} download={`wall-chart-${book.book}.pdf`}>Save the chart as PDF</a> <a href={address} target="_blank" rel="noopener">Open it</a></p>}
    </section>
  );
}
