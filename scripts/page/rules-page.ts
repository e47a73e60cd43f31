// The table of every rule of the public book: what it says, when the mark was in use, on whose authority, and how that is known.
import {sayAuthority, sayWindowIn} from "../../cli/words/authority.ts";
import {sayWindow, type Book, type Cite, type Mark, type Scheme} from "../../engine/index.ts";
import {cell, code, page, table} from "./markdown.ts";

/** The page of a public book. */
export function rulesPage(book: Book): string {
  const families = new Map<string, [string, Mark][]>();
  for (const [id, mark] of Object.entries(book.marks)) {
    const family = id.split(".").slice(0, -1).join(".") || "book";
    families.set(family, [...(families.get(family) ?? []), [id, mark]]);
  }
  return page("Public rules", "`rulebooks/public`", [
    `Edition ${book.edition}. A pair of months joined by … is a soft end: first seen…usual from, or last usual…last seen. Rules known from memory only are marked so and have softer windows.`,
    ...[...families].flatMap(([family, marks]) => [`## ${family}`, ...marks.map((one) => markTable(book, ...one))]),
  ]);
}

function markTable(book: Book, id: string, mark: Mark): string {
  const kind = {choice: "one of several", presence: "present or absent", serial: "a number that grows", coded: "a text with a date in it", repeat: "repeats a code of the label"}[mark.kind];
  const says = mark.says ? ` ${cell(mark.says)}` : "";
  const caution = mark.caution ? ` *${cell(mark.caution)}*` : "";
  return `**${cell(mark.name)}** ${code(id)}, ${kind}.${says}${caution}\n\n${table(["seen", "in use", "source, and how it is known"], rowsOf(book, mark))}`;
}

function rowsOf(book: Book, mark: Mark): string[][] {
  const row = (id: string, name: string, window: string, cite: Cite) => [`${code(id)} ${cell(name)}`.trim(), window, authority(book, cite)];
  switch (mark.kind) {
    case "choice":
      return Object.entries(mark.values).map(([id, {name, window, source}]) => row(id, name, inUse(window), source ?? mark.source));
    case "serial":
      return [mark.knots[0]!, mark.knots.at(-1)!].map(({month, number}) => row(String(number), "", `first issued ${sayWindowIn(month)}`, mark.source));
    case "coded":
      return mark.schemes.map((id) => schemeRow(book, id, row));
    default:
      return [row("present", "", inUse(mark.window), mark.source)];
  }
}

function schemeRow(book: Book, id: string, row: (id: string, name: string, window: string, cite: Cite) => string[]): string[] {
  const {name, window, source}: Scheme = book.schemes[id]!;
  return row(id, name, inUse(window), source);
}

const inUse = (window: Parameters<typeof sayWindow>[0]) => sayWindowIn(sayWindow(window));

function authority({sources}: Book, cite: Cite): string {
  return cell(sayAuthority(sources[cite.ref], cite)) + (cite.at ? `, ${cell(cite.at)}` : "");
}
