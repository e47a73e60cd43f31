// What a book holds, in one line.
import type {BookSummary} from "../../commands/describe-book.ts";

const count = (n: number, one: string) => `${n} ${one}${n === 1 ? "" : "s"}`;

export function sayBook({kind, from, until, marks, windows, schemes, sources, fromMemory}: BookSummary): string {
  const memory = fromMemory > 0 ? ` (${fromMemory} from memory)` : "";
  return `${kind === "public" ? "any maker" : "a maker's book"}, ${from} to ${until ?? "now"}; ${count(marks, "mark")}, ${count(windows, "window")}${memory}, ${count(schemes, "code scheme")}, ${count(sources, "source")}`;
}
