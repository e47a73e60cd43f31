// The wordings of everything that can be wrong in a book or a garment, one function each, to be read in a row.
import type {Problem} from "../engine/problem.ts";
import {nearest} from "../engine/nearest.ts";
import {clip, listed, show} from "./place.ts";

const model = "docs/model.md";

// ---- the shape of entries

export function unknownKey(at: string, key: string, known: readonly string[]): Problem {
  const near = nearest(key, known);
  return {
    code: "shape/unknown-name", at, what: `${show(key)} is not known here`, why: "what is not understood is refused, for leaving it out would change a date",
    fix: near ? `write ${near}, if that is meant, or take the entry out` : known.length > 0 ? `use one of ${listed(known)}` : "take the entry out",
  };
}

/** @param allowed  the few values that can stand there; empty when there are many */
export const missingKey = (at: string, key: string, meaning: string | null, allowed: readonly string[]): Problem => ({
  code: "shape/missing", at, what: `${key} is missing`, why: meaning ? `it is needed: ${meaning}` : "it is needed here",
  fix: `add ${key}${allowed.length > 0 ? `, one of ${listed(allowed)}` : ""}`,
});

export function wrongType(at: string, value: unknown, wanted: readonly string[], meaning: string | null): Problem {
  const what = value === null ? "nothing stands here" : `${show(value)} stands here`;
  const quotes = wanted.includes("text") && (typeof value === "number" || typeof value === "boolean");
  const brackets = wanted.includes("a list") && typeof value !== "object";
  const figure = wanted.includes("a number") && typeof value === "string" && /^\d+,\d+$/.test(value);
  return {
    code: "shape/wrong-kind", at, what, why: `${listed(wanted)} belongs here${meaning ? ` (${meaning})` : ""}`,
    fix: quotes ? `put it in quotes: "${clip(String(value), 60)}"` : figure ? `write a point in place of the comma: ${String(value).replace(",", ".")}`
      : brackets && value !== null ? `put it in square brackets: [${clip(String(value), 60)}]` : `write ${listed(wanted)}${value === null ? ", or take the entry out" : ""}`,
  };
}

export function notOneOf(at: string, value: unknown, allowed: readonly string[]): Problem {
  const near = typeof value === "string" ? nearest(value, allowed) : null;
  return {
    code: "shape/not-one-of", at, what: `${show(value)} stands here`, why: `only ${listed(allowed.map((name) => (name.trim() === "" ? show(name) : name)))} can stand here`,
    fix: near ? `write ${near}, if that is meant` : "write one of these",
  };
}

export const badForm = (at: string, value: unknown, form: string): Problem => ({
  code: "shape/badly-written", at, what: `${show(value)} stands here`, why: `what belongs here is ${form}`, fix: `write ${form}`,
});

export const badName = (at: string, name: string, form: string): Problem => ({
  code: "shape/bad-name", at, what: `${show(name)} cannot be a name here`, why: `a name here consists of ${form}`, fix: "write the name in that form",
});

export const outOfRange = (at: string, what: string, limit: string): Problem => ({
  code: "shape/out-of-range", at, what, why: `it must be ${limit}`, fix: `make it ${limit}`,
});

// ---- windows

export const windowReversed = (at: string, pair: "begins" | "ends", first: string, second: string): Problem => ({
  code: "window/reversed", at, what: `${pair} runs from ${first} back to ${second}`,
  why: pair === "begins" ? "a mark is first seen before it is usual" : "a mark is last usual before it is last seen",
  fix: `swap the two months: ${pair}: [${second}, ${first}]`, see: model,
});

export const windowShut = (at: string, begins: string, ends: string): Problem => ({
  code: "window/ends-before-it-begins", at, what: `the window is usual from ${begins} but last usual in ${ends}`, why: "a window that ends before it has fully begun never holds in full, so the months contradict each other",
  fix: "swap begins and ends, correct a year, or move both towards each other's outer months", see: model,
});

export const memoryHardEnd = (at: string, pair: string, months: number, least: number): Problem => ({
  code: "memory/hard-end", at, what: `${pair} leaves only ${months} ${months === 1 ? "month" : "months"} between its two months, and the source is memory`, why: "a month that was only remembered may be wrong, and a hard end would rule out true dates",
  fix: `set the two months at least ${least} months apart, or read a source and say how: read`, see: model,
});

export const memoryShut = (at: string): Problem => ({
  code: "memory/outside-zero", at, what: "outside is 0, and the source is memory", why: "with 0 a remembered fact would rule out every month beyond its window",
  fix: "give outside a small share such as 0.01, or read a source and say how: read", see: model,
});

export const coversReversed = (at: string, from: string, until: string): Problem => ({
  code: "book/covers-reversed", at, what: `the book covers ${from} to ${until}`, why: "it ends before it begins, so it speaks of no month", fix: "swap the months, or leave until out",
});

// ---- names that point at something

export function unlistedSource(at: string, ref: string, known: readonly string[]): Problem {
  return {...unknownName(at, "source", ref, known), code: "book/unlisted-source"};
}

/** @param kind  what the name should stand for: place, piece, scheme, mark, market, plant, lot, label kind */
export function unknownName(at: string, kind: string, given: string, known: readonly string[]): Problem {
  const near = nearest(given, known);
  const some = known.length > 12 ? `${known.slice(0, 12).join(", ")} …` : listed(known);
  return {
    code: `book/unknown-${kind.replaceAll(" ", "-")}`, at, what: `there is no ${kind} ${show(given)} in this book`, why: `the rule points at a ${kind} that is not there`,
    fix: near ? `write ${near}, if that is meant, or add the ${kind}` : known.length > 0 ? `use one of ${some}, or add the ${kind}` : `add the ${kind}`,
  };
}

export const reservedName = (at: string, name: string, kind: string, use: string): Problem => ({
  code: "book/reserved-name", at, what: `a ${kind} is called ${name}`, why: `on a garment ${name} already stands for ${use}`, fix: "choose another name",
});

export const inTwoGroups = (at: string, mark: string, other: string): Problem => ({
  code: "book/in-two-groups", at, what: `${show(mark)} stands in ${other} already`, why: "a mark is tempered by one group only", fix: "take it out of one of the two, or join the groups",
});

// ---- numbers that contradict each other

export const rangeReversed = (at: string, what: string, from: number, until: number): Problem => ({
  code: "book/range-reversed", at, what: `${what} from ${from} to ${until}`, why: "the first number must not be above the second", fix: `swap them: [${until}, ${from}]`,
});

export const sharesAllZero = (at: string): Problem => ({
  code: "book/shares-all-zero", at, what: "all shares are 0", why: "some width must be possible in every period", fix: "give at least one width a share above 0",
});

export const nothingListed = (at: string, what: string): Problem => ({
  code: "book/nothing-listed", at, what: `${what} has no entry`, why: "with nothing listed it can never say anything", fix: "add an entry, or take it out",
});

export const knotsNotAscending = (at: string, what: "month" | "number", before: string, given: string): Problem => ({
  code: "serial/not-ascending", at, what: `${what} ${given} follows ${before}`, why: what === "month" ? "each entry must be later than the one before" : "a serial number only grows with time",
  fix: "put the entries in order of time, and look for a slip in the figures", see: model,
});

export const lagReversed = (at: string, usual: number, longest: number): Problem => ({
  code: "book/lag-reversed", at, what: `usual is ${usual} months, longest ${longest}`, why: "the longest lag cannot be shorter than the usual one", fix: `swap them, or make longest at least ${usual}`,
});

export const half = (at: string, given: string, missing: string): Problem => ({
  code: "book/half-given", at, what: `${given} is given, ${missing} is not`, why: "the two together say how use dies out", fix: `add ${missing}, or take ${given} out as well`,
});

// ---- code schemes

export const noDatePart = (at: string): Problem => ({
  code: "scheme/no-date", at, what: "no part of the scheme says anything of the date", why: "such a scheme would read any code and date nothing", fix: "add a part such as { year: two figures }",
});

export const tableOutOfRange = (at: string, sign: string, value: number, least: number, most: number): Problem => ({
  code: "scheme/table-out-of-range", at, what: `the sign ${show(sign)} stands for ${value}`, why: `the table holds numbers from ${least} to ${most}`, fix: "correct the number",
});

export const badSpan = (at: string, text: string): Problem => ({
  code: "scheme/specimen-span", at, what: `${show(text)} stands here`, why: "a specimen reads as a month, a day, or a span of them", fix: "write 1968-03 or 1968-03-09, or 1968-03..1968-04 with the earlier month first",
});

export const specimenUnread = (at: string, code: string, span: string): Problem => ({
  code: "scheme/specimen-unread", at, what: `the specimen ${show(code)} does not read at all`, why: `the scheme says that it reads as ${span}`, fix: "correct the parts, the window or the specimen",
});

export const specimenAstray = (at: string, code: string, span: string, readings: readonly string[]): Problem => ({
  code: "scheme/specimen-astray", at, what: `the specimen ${show(code)} reads as ${listed(readings.slice(0, 6))}`, why: `none of that lies within ${span}`, fix: "correct the parts, the window or the specimen",
});

export const specimenReads = (at: string, code: string, readings: readonly string[]): Problem => ({
  code: "scheme/specimen-reads", at, what: `the specimen ${show(code)} reads as ${listed(readings.slice(0, 6))}`, why: "it stands under never reads", fix: "correct the parts or the window, or take the specimen out",
});

// ---- a book made of several files

export const writtenInTwoFiles = (at: string, kind: string, id: string, other: string): Problem => ({
  code: "book/in-two-files", at, what: `the ${kind} ${show(id)} stands in ${other} as well`, why: "only one of the two could count", fix: "keep it in one file, or give one of them another name",
});

export const badFileName = (at: string): Problem => ({
  code: "book/bad-file-name", at, what: "the name of the file or of its folder cannot be part of a rule's name", why: "the path is the first part of every rule's name: lower-case letters and digits joined by dashes, ending in .yaml", fix: "rename it, for example to care-label.yaml",
});

export const noHead = (at: string): Problem => ({
  code: "book/no-head", at, what: "the folder has no book.yaml", why: "book.yaml says which book the subject files belong to", fix: "add book.yaml, or name a single book file",
});

export const twoBooks = (at: string, id: string, other: string): Problem => ({
  code: "book/two-of-a-name", at, what: `the book is called ${id}, and so is ${other}`, why: "marks and garments point at a book by its name", fix: "give one of them another name",
});
