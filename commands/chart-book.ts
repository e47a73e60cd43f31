// Draws the time chart of a rule book.
import {z} from "zod";
import {monthIndex, nearest, parseMonth, printMonth, type Book, type MonthIndex} from "../engine/index.ts";
import {chartBook} from "../rulebooks/chart.ts";
import {datedRules} from "../rulebooks/dated-rules.ts";
import {command} from "./command.ts";
import * as say from "./problems.ts";
import {bookOf} from "./world.ts";

export const chartOfBook = command({
  name: "books.chart",
  summary: "draw the time chart of a rule book as SVG",
  input: z.strictObject({
    book: z.string().describe("id of a book, or the path of a book file or folder"),
    from: z.string().optional().describe("first month of the chart; that of the first window when left out"),
    until: z.string().optional().describe("last month of the chart; this month when left out"),
    width: z.number().default(1200).describe("width in pixels, 480 to 6000"),
    only: z.array(z.string()).optional().describe("labels, schemes, plants, lots, fabrics, or the beginning of mark ids like us.care"),
  }),
  run({book: id, from, until, width, only}, world) {
    const book = bookOf(world, id);
    const ids = world.books.map((one) => one.book);
    if (!book) return {problems: [say.unknownBook("book", id, ids, nearest(id, ids))]};
    const axis = {from: from ?? firstMonth(book), until: until ?? lastMonth(book, world.today)};
    try {
      return {answer: chartBook(book, {...axis, width, ...(only ? {only} : {})})};
    } catch (error) {
      if (error instanceof RangeError) return {problems: [say.badChart("chart", error.message)]};
      throw error;
    }
  },
  json: (svg: string) => ({svg}),
});

/** January of the year in which the first window begins. */
function firstMonth(book: Book): string {
  const begins = datedRules(book).flatMap(({window}) => window.begins?.[0] ?? window.ends?.[0] ?? []).sort();
  return `${(begins[0] ?? book.covers.from).slice(0, 4)}-01`;
}

/** December of the last covered year, or of this one. */
function lastMonth({covers}: Book, today: MonthIndex): string {
  const last = covers.until ? Math.min(today, parseMonth(covers.until)!) : today;
  return `${printMonth(monthIndex(last)).slice(0, 4)}-12`;
}
