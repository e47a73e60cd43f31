// Checks numbers and names of a book that contradict each other, mark by mark and list by list.
import type {Problem} from "../engine/problem.ts";
import type {Book, CodeList, Mark, Part, Scheme, SerialMark} from "../engine/rule/schema.ts";
import {labelMarks} from "./check-references.ts";
import {softMonths} from "./check-windows.ts";
import type {Path, Where} from "./place.ts";
import * as say from "./problems.ts";

/** Words that a garment uses for what a book does not list; no value may be called so. */
const seenWords = {other: "a value that the book does not list", present: "a mark that is there", absent: "a mark that is not there"} as const;

/** Checks marks, label kinds, schemes, code lists, field widths and groups. */
export function checkNumbers(book: Book, where: Where): Problem[] {
  return [
    ...Object.entries(book.marks).flatMap(([id, mark]) => checkMark(id, mark, where)),
    ...checkValueNames(Object.keys(book.labels?.kinds ?? {}), "label kind", ["labels", "kinds"], where),
    ...(book.labels && Object.keys(book.labels.kinds).length === 0 ? [say.nothingListed(where(["labels", "kinds"]), "kinds")] : []),
    ...Object.entries(book.schemes).flatMap(([id, scheme]) => checkScheme(scheme, ["schemes", id], where)),
    ...(["plants", "lots", "fabrics"] as const).flatMap((list) => (book[list] ? checkWidths(book[list], list, where) : [])),
    ...Object.entries(book.fields).flatMap(([id, field]) => (field ? checkRange("figures", field.figures, ["fields", id, "figures"], where) : [])),
    ...checkGroups(book, where),
  ];
}

function checkMark(id: string, mark: Mark, where: Where): Problem[] {
  const path = ["marks", id];
  const use = Object.hasOwn(labelMarks, id) ? labelMarks[id as keyof typeof labelMarks] : undefined;
  const problems = use ? [say.reservedName(where(path, "key"), id, "mark", use)] : [];
  if (mark.kind === "serial") problems.push(...checkSerial(mark, path, where));
  if (mark.kind === "choice") {
    const values = Object.keys(mark.values);
    problems.push(...checkValueNames(values, "value", [...path, "values"], where));
    if (values.length === 0) problems.push(say.nothingListed(where([...path, "values"]), "values"));
  }
  return problems;
}

function checkValueNames(names: readonly string[], kind: string, path: Path, where: Where): Problem[] {
  return names.filter((name) => Object.hasOwn(seenWords, name)).map((name) => say.reservedName(where([...path, name], "key"), name, kind, seenWords[name as keyof typeof seenWords]));
}

function checkSerial({knots, fuzz, use, source}: SerialMark, path: Path, where: Where): Problem[] {
  const problems: Problem[] = [];
  knots.forEach(({month, number}, i) => {
    const before = knots[i - 1];
    if (!before) return;
    const here = [...path, "knots", i];
    if (month <= before.month) problems.push(say.knotsNotAscending(where([...here, "month"]), "month", before.month, month));
    if (number <= before.number) problems.push(say.knotsNotAscending(where([...here, "number"]), "number", String(before.number), String(number)));
  });
  const {rise, usual, longest} = use;
  if (usual != null && longest == null) problems.push(say.half(where([...path, "use"]), "usual", "longest"));
  if (usual == null && longest != null) problems.push(say.half(where([...path, "use"]), "longest", "usual"));
  if (usual != null && longest != null && longest < usual) problems.push(say.lagReversed(where([...path, "use"]), usual, longest));
  if (source.how === "memory") {
    const risesIn = fuzz + Math.max(rise, fuzz);
    if (risesIn < softMonths) problems.push(say.memoryHardEnd(where([...path, "fuzz"]), "fuzz with rise", risesIn, softMonths));
    if (usual != null && longest != null && longest >= usual && longest - usual < softMonths) problems.push(say.memoryHardEnd(where([...path, "use"]), "usual to longest", longest - usual, softMonths));
  }
  return problems;
}

function checkScheme({parts, lag}: Scheme, path: Path, where: Where): Problem[] {
  const problems = parts.flatMap((part, i) => checkPart(part, [...path, "parts", i], where));
  if (!parts.some((part) => !("text" in part || "digits" in part || "letters" in part))) problems.push(say.noDatePart(where([...path, "parts"])));
  if (lag && lag.longest < lag.usual) problems.push(say.lagReversed(where([...path, "lag"]), lag.usual, lag.longest));
  return problems;
}

function checkPart(part: Part, path: Path, where: Where): Problem[] {
  if ("digits" in part && Array.isArray(part.digits)) return checkRange("figures", part.digits, [...path, "digits"], where);
  if ("letters" in part && Array.isArray(part.letters)) return checkRange("letters", part.letters, [...path, "letters"], where);
  if ("month" in part && typeof part.month === "object") return checkTable(part.month, 1, 12, [...path, "month"], where);
  if ("year" in part && typeof part.year === "object") return checkTable(part.year, 1800, 2199, [...path, "year"], where);
  return [];
}

function checkTable(table: Readonly<Record<string, number>>, least: number, most: number, path: Path, where: Where): Problem[] {
  const entries = Object.entries(table);
  if (entries.length === 0) return [say.nothingListed(where(path), "the table")];
  return entries.filter(([, value]) => value < least || value > most).map(([sign, value]) => say.tableOutOfRange(where([...path, sign]), sign, value, least, most));
}

function checkWidths({widths}: CodeList, list: string, where: Where): Problem[] {
  return widths.flatMap(({shares}, i) => (Object.values(shares).some((share) => share > 0) ? [] : [say.sharesAllZero(where([list, "widths", i, "shares"]))]));
}

function checkRange(what: string, [from, until]: readonly [number, number], path: Path, where: Where): Problem[] {
  return until < from ? [say.rangeReversed(where(path), what, from, until)] : [];
}

function checkGroups({groups}: Book, where: Where): Problem[] {
  const seen = new Map<string, string>();
  return Object.entries(groups).flatMap(([id, group]) =>
    group.marks.flatMap((mark, i) => {
      const first = seen.get(mark);
      seen.set(mark, first ?? `group ${id}`);
      return first ? [say.inTwoGroups(where(["groups", id, "marks", i]), mark, first)] : [];
    }),
  );
}
