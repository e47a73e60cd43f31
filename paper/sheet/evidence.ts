// The marks that a date rests on, from a finding: what was seen, how much it tells, when it was in use, and who says so.
import {rowsId, sayOdds, sayWindow, type Book} from "../../engine/index.ts";
import type {WindowText} from "../../engine/rule/schema.ts";
import type {FindingJson} from "../../commands/finding-shape.ts";
import {readWindow} from "../draw/read-window.ts";
import {capital, sayUse, sentence} from "./say.ts";
import type {Evidence, SheetThread} from "./sheet.ts";

export const ways: Readonly<Record<string, string>> = {read: "seen in the source", part: "partly seen in the source", memory: "from memory, not looked up", inferred: "own judgement"};

/** Every mark of the ledger: odd ones first, then by how much they tell. */
export function evidenceOf(finding: FindingJson, books: readonly Book[]): Evidence[] {
  const odd = (id: string) => oddChance(finding, id);
  const lines = [...finding.ledger].sort((a, b) => (odd(b.mark) ?? 0) - (odd(a.mark) ?? 0) || b.bits - a.bits);
  return lines.map(({mark, bits}) => {
    const chance = odd(mark);
    const side = finding.verdict.kind === "two dates" ? finding.twoDates?.speaking.find((one) => one.mark === mark)?.side : undefined;
    return {
      ...nameOf(finding, mark),
      weight: bits < 0.05 ? 0 : Math.min(5, Math.max(1, Math.ceil(bits))),
      odd: chance !== undefined,
      note: chance !== undefined ? `does not fit, ${sayOdds(chance)}` : side ? (side === "look" ? "of the older look" : "of the making") : null,
      lines: mark === rowsId ? rowLines(finding, books) : ruleLines(finding, mark, books),
    };
  });
}

/** Its line of stitches, in the same order. */
export function threadsOf(finding: FindingJson, books: readonly Book[]): SheetThread[] {
  return [...finding.ledger].sort((a, b) => b.bits - a.bits).map(({mark}) => {
    const {name, seen} = nameOf(finding, mark);
    return {name: seen === null || mark === rowsId ? name : seen.length < 12 ? `${capital(seen)}: ${name.toLowerCase()}` : capital(seen), window: windowOf(finding, mark, books), odd: oddChance(finding, mark) !== undefined};
  });
}

function windowOf(finding: FindingJson, mark: string, books: readonly Book[]): WindowText | null {
  if (mark === rowsId) return schemeOf(finding, books)?.scheme.window ?? null;
  const rule = finding.rules.find((one) => one.mark === mark);
  return rule && rule.seen !== "absent" ? readWindow(rule.window) : null;
}

/** What a mark is called, and what was seen of it. */
export function nameOf(finding: FindingJson, mark: string): {readonly name: string; readonly seen: string | null} {
  if (mark === rowsId) return {name: "The rows of numbers", seen: datedReading(finding)?.date ?? null};
  const rules = finding.rules.filter((one) => one.mark === mark);
  const seen = rules.map((rule) => rule.seen);
  return {name: capital(rules[0]?.name ?? mark), seen: seen.length === 0 || seen[0] === "present" ? null : seen.join(" or ")};
}

/** The chance that a mark, or the piece it sits on, does not belong; of two dates nothing is out of place. */
function oddChance({odd, pieces, verdict}: FindingJson, mark: string): number | undefined {
  if (verdict.kind === "two dates") return undefined;
  return odd.find((one) => one.id === mark || (one.piece && pieces.some(({piece, marks}) => piece === one.id && marks.includes(mark))))?.probability;
}

function ruleLines(finding: FindingJson, mark: string, books: readonly Book[]): string[] {
  return finding.rules.filter((one) => one.mark === mark).flatMap(({says, window, source, at, how, book, edition, caution}) => [
    [says === null ? "" : sentence(says), sayUse(window)].filter((words) => words !== "").join(" "),
    `${[source, at].filter((words) => words !== null).join(", ") || "No source named"} (${ways[how]}). ${titleOf(books, book)}, edition ${edition}.`,
    caution === null ? "" : sentence(caution),
  ]).filter((line) => line !== "");
}

function rowLines(finding: FindingJson, books: readonly Book[]): string[] {
  const rows = `As printed: ${finding.rows.map(({row}) => row).join(" / ")}.`;
  const read = datedReading(finding);
  const found = schemeOf(finding, books);
  if (!read || !found) return [rows, "No date is read from them."];
  const {scheme, book} = found;
  const source = book.sources[scheme.source.ref];
  const parts = [["plant", read.plant], ["lot", read.lot], ["cloth", read.fabric]].filter(([, code]) => code !== null).map(([name, code]) => `${name} ${code}`);
  return [
    `${rows} Read as ${scheme.name}${parts.length > 0 ? `; ${parts.join(", ")}` : ""}. ${sayUse(sayWindow(scheme.window))}`,
    `${source?.title ?? scheme.source.ref}${scheme.source.at ? `, ${scheme.source.at}` : ""} (${ways[scheme.source.how]}). ${book.title}, edition ${book.edition}.`,
  ];
}

/** The scheme by which the rows are dated. */
function schemeOf(finding: FindingJson, books: readonly Book[]) {
  const id = datedReading(finding)?.scheme;
  const book = books.find(({schemes}) => id != null && schemes[id]);
  return book ? {scheme: book.schemes[id!]!, book} : null;
}

/** The likeliest reading of a row that has a date. */
export function datedReading({rows}: FindingJson) {
  return rows.flatMap(({readings}) => readings).filter(({date}) => date !== null).sort((a, b) => b.probability - a.probability)[0];
}

export const titleOf = (books: readonly Book[], id: string): string => books.find(({book}) => book === id)?.title ?? id;
