// From a garment as written to observations of marks; whatever cannot be understood is a problem, never dropped.
import {nearest} from "../nearest.ts";
import type {Problem} from "../problem.ts";
import {readRow, type PrintedRow, type RowSlip} from "../cell/printed-row.ts";
import type {Observation, SeenText} from "../mark/observation.ts";
import type {Garment, RowText, Seen as SeenValue} from "../rule/garment.ts";
import type {Book, Mark} from "../rule/schema.ts";
import {labelId} from "./ready-book.ts";
import type {Seen} from "./evidence.ts";
import * as say from "./problems.ts";

/** Marks that the books know, by id; one id may stand in several makers' books. */
export type KnownMarks = ReadonlyMap<string, readonly Mark[]>;

/** All marks of some books, the label kinds as a choice among them. */
export function knownMarks(books: readonly Book[]): KnownMarks {
  const result = new Map<string, Mark[]>();
  const add = (id: string, mark: Mark) => result.set(id, [...(result.get(id) ?? []), mark]);
  for (const book of books) {
    for (const [id, mark] of Object.entries(book.marks)) add(id, mark);
    if (book.labels) add(labelId, {...book.labels, kind: "choice", values: book.labels.kinds});
  }
  return result;
}

/** Turns what owners write into observations; remembers what the same words meant before. */
export interface Resolver {
  /** All problems at once. */
  resolve(garment: Garment): {seen: Seen; problems: Problem[]};
}

const mostRemembered = 4000;

/**
 * @param known  marks of the books that hold for the garment
 * @param all    marks of all books at hand, to say where a mark is known
 */
export function makeResolver(known: KnownMarks, all: KnownMarks): Resolver {
  const rowsKnown = new Map<string, PrintedRow | RowSlip>();
  const seenKnown = new Map<string, Observed>();
  const remember = <T>(map: Map<string, T>, key: string | null, make: () => T): T => {
    const found = key === null ? undefined : map.get(key);
    if (found !== undefined) return found;
    const made = make();
    if (key !== null) {
      if (map.size >= mostRemembered) map.clear();
      map.set(key, made);
    }
    return made;
  };
  const readRemembered = (row: RowText) => remember(rowsKnown, typeof row === "string" ? row : "text" in row ? `${row.text}@${row.at ?? ""}` : JSON.stringify(row), () => readRow(row));
  const observeRemembered = (id: string, kinds: readonly Mark[], value: SeenValue) =>
    remember(seenKnown, typeof value === "string" ? `${id}=${value}` : null, () =>
      kinds.map((mark) => observe(mark, value)).sort((a, b) => Number("problem" in a) - Number("problem" in b))[0]!,
    );

  return {
    resolve(garment) {
      const problems: Problem[] = [];
      const marks = new Map<string, Observation>();
      const rows: PrintedRow[] = [];
      const {rows: typed, ...saw} = garment.saw;
      (typed ?? []).forEach((row, i) => {
        const read = readRemembered(row);
        if ("slip" in read) problems.push(say.rowSlip(`saw.rows[${i}]`, read.slip));
        else rows.push(read);
      });
      for (const [id, value] of Object.entries(saw)) {
        const kinds = known.get(id);
        if (!kinds) {
          problems.push(all.has(id) ? say.otherMakersMark(`saw.${id}`, id) : say.unknownMark(`saw.${id}`, id, nearest(id, known.keys())));
          continue;
        }
        const read = observeRemembered(id, kinds, value as SeenValue);
        if ("problem" in read) problems.push(read.problem(`saw.${id}`));
        else marks.set(id, read.observation);
      }
      return {seen: {marks, rows, market: garment.market ?? null, type: garment.type ?? null}, problems};
    },
  };
}

type Observed = {observation: Observation} | {problem: (at: string) => Problem};

/** What a written value means for a mark. */
export function observe(mark: Mark, value: SeenValue): Observed {
  const weights = weightsOf(value);
  if (!weights) return {problem: (at) => say.noWeight(at)};
  const words = [...weights.keys()];
  const only = words.length === 1 ? words[0]!.trim().toLowerCase() : null;
  switch (mark.kind) {
    case "choice":
      return observeChoice(mark.values, weights);
    case "presence":
      if (only === "present" || only === "yes" || only === "seen") return {observation: {kind: "presence", present: true}};
      if (only === "absent" || only === "no" || only === "none") return {observation: {kind: "presence", present: false}};
      return {problem: (at) => say.notPresence(at, words.join(", "))};
    case "serial":
      if (only === "none") return {observation: {kind: "missing"}};
      return observeNumber(only);
    default:
      if (only === "none") return {observation: {kind: "missing"}};
      return observeText(mark.kind, weights);
  }
}

function weightsOf(value: SeenValue): Map<string, number> | null {
  const pairs: [string, number][] =
    typeof value === "string" ? [[value, 1]] : Array.isArray(value) ? value.map((v) => [v, 1]) : Object.entries(value.either);
  const positive = pairs.filter(([, weight]) => weight > 0 && Number.isFinite(weight));
  const most = Math.max(0, ...positive.map(([, weight]) => weight));
  return most > 0 ? new Map(positive.map(([word, weight]) => [word, weight / most])) : null;
}

function observeChoice(values: Readonly<Record<string, {name: string}>>, weights: ReadonlyMap<string, number>): Observed {
  const found: [string, number][] = [];
  for (const [word, weight] of weights) {
    const wanted = word.trim().toLowerCase();
    const id = [...Object.keys(values), "none", "other"].find((v) => v === wanted) ?? Object.keys(values).find((v) => values[v]!.name.toLowerCase() === wanted);
    if (id === undefined) return {problem: (at) => say.unknownValue(at, word, Object.keys(values), nearest(word, Object.keys(values)))};
    found.push([id, weight]);
  }
  return {observation: {kind: "choice", values: found}};
}

function observeNumber(word: string | null): Observed {
  const figures = word?.replace(/[\s,.']/g, "").match(/\d+/)?.[0];
  const number = Number(figures);
  if (!figures || !Number.isSafeInteger(number)) return {problem: (at) => say.notNumber(at, word ?? "several values")};
  return {observation: {kind: "serial", number}};
}

function observeText(kind: "coded" | "repeat", weights: ReadonlyMap<string, number>): Observed {
  const texts: SeenText[] = [];
  for (const [word, weight] of weights) {
    const row = readRow(word);
    if ("slip" in row) return {problem: (at) => say.rowSlip(at, row.slip)};
    if (row.cells.length === 0) return {problem: (at) => say.emptyText(at)};
    texts.push({row, weight});
  }
  return {observation: {kind, texts}};
}
