// Decodes a row together with the row grammar: texts that a book's labels can print are asked of the reader by its exact score.
import type {Book} from "../../engine/index.ts";
import type {LabelKind, LayoutRow} from "../../engine/rule/schema.ts";
import type {ReadRow} from "../../reader/model.ts";
import {fieldPrint, type FieldName} from "./widen/field-texts.ts";
import {lineTexts, type LineText, type Step} from "./widen/line.ts";
import {placeCosts, type PlaceCosts} from "./widen/place-costs.ts";
import {leftAlone, maybeFigures, spansOf, type TextSpan} from "./widen/spans.ts";

export interface WidenOptions {
  /** Label kinds that are possible; all of the books' when left out. */
  readonly kinds?: readonly string[];
  /** At most so many texts are asked of the reader. Source: own choice, docs/decisions/0020-rows-from-a-reader.md. */
  readonly mostAsked?: number;
}

/** So many readings of the reader's own, and so many that the grammar added, are handed on. Source: own choice; a reading shape holds 60. */
const mostOwn = 32;
const mostAdded = 28;
const mostStrings = 60;
/** A reading less likely than this part of the likeliest cannot win by any grammar. Source: own choice. */
const leastPart = 1e-7;
const mostAsked = 400;
/** Texts that one line of a layout may propose. */
const mostOfLine = 40;

/**
 * A row with the readings that the books' label grammar adds to the reader's own, all with the reader's exact chances.
 * @param row    as the recogniser itself says, before any reading map
 * @param score  exact chance of a text, as OpenRow.score
 * @param books  makers' books whose labels it may be; without one the row comes back as it is
 * @returns      the same row with more strings, a larger mass and a smaller `none`; the order of its own is kept where nothing better was found
 * @cost         at most `mostAsked` scores, and about a tenth of a second of search for a long row and all kinds of one book
 */
export function widen(row: ReadRow, score: (text: string) => number, books: readonly Book[], {kinds, mostAsked: most = mostAsked}: WidenOptions = {}): ReadRow {
  const known = new Set(row.strings.map(({text}) => text));
  const proposed = propose(row, books, kinds);
  if (proposed.length === 0) return row;
  const least = (row.strings[0]?.p ?? 0) * leastPart;
  const asked = proposed.filter(({text}) => !known.has(text)).slice(0, most);
  const added = asked.map(({text}) => ({text, p: Math.min(1, score(text))})).filter(({p}) => p > least).sort((a, b) => b.p - a.p).slice(0, mostAdded);
  // What the grammar can print stays in the list, however far behind readings that no label prints.
  const printable = new Set(proposed.map(({text}) => text));
  const own = row.strings.filter(({text}, i) => i < mostOwn || printable.has(text)).slice(0, mostStrings - added.length);
  const strings = [...own, ...added].sort((a, b) => b.p - a.p);
  const mass = Math.min(1, strings.reduce((sum, {p}) => sum + p, 0));
  return {...row, strings, mass, none: 1 - mass};
}

/**
 * Texts that the books' labels could have printed in this row, likeliest first, before the reader is asked.
 * @example
 * propose(row, [marrowfield], ["green-satin"])[0]?.text // -> "3 8 21"
 */
export function propose(row: Pick<ReadRow, "best" | "places">, books: readonly Book[], kinds?: readonly string[]): LineText[] {
  const places = placeCosts(row);
  if (!/\d/.test(row.best) || places.characters.length < 2 || places.characters.length > longest) return [];
  const cheapest = new Map<string, number>();
  for (const book of books) {
    for (const steps of linesOf(book, places, kinds)) {
      for (const {text, cost} of lineTexts(steps, places, mostOfLine)) if (text !== "" && cost < (cheapest.get(text) ?? Infinity)) cheapest.set(text, cost);
    }
  }
  return [...cheapest].map(([text, cost]) => ({text, cost})).sort((a, b) => a.cost - b.cost || (a.text < b.text ? -1 : 1));
}

/** Longer rows are words. */
const longest = 32;

/** All lines of the possible layouts, and rows of unknown layout with one date or plant in them. */
function linesOf(book: Book, places: PlaceCosts, kinds: readonly string[] | undefined): Step[][] {
  const all = Object.entries(book.labels?.kinds ?? {});
  const possible = kinds === undefined ? all : all.filter(([id]) => kinds.includes(id));
  const schemes = (kind: LabelKind) => kind.schemes ?? Object.keys(book.schemes);
  const spans = new Map<string, readonly (readonly TextSpan[])[]>();
  const step = (field: FieldName, ids: readonly string[]): Step => {
    const key = field === "date" ? `date ${ids.join()}` : field;
    let found = spans.get(key);
    if (!found) spans.set(key, (found = spansOf(fieldPrint(book, field, ids), places)));
    return {spans: found};
  };
  const prefixes = prefixesOf(book, places);
  const lines = new Map<string, Step[]>();
  for (const [, kind] of possible) {
    for (const {fields} of kind.rows) {
      const ids = fields.includes("date") ? schemes(kind) : [];
      lines.set(JSON.stringify([fields, ids]), stepsOf(fields, (field) => step(field, ids), prefixes, places));
    }
  }
  const ids = [...new Set(possible.flatMap(([, kind]) => schemes(kind)))];
  const alone = {spans: leftAlone(places)};
  const free = (["date", ...(book.plants ? ["plant" as const] : [])] as const).map((field): Step[] => [alone, {between: ""}, step(field, ids), {between: ""}, alone]);
  return possible.length === 0 ? [] : [...lines.values(), ...free];
}

/** Fields before which a book knows extra figures, with where these could stand. */
type Prefixes = Readonly<Partial<Record<FieldName, readonly (readonly TextSpan[])[]>>>;

function prefixesOf(book: Book, places: PlaceCosts): Prefixes {
  const lists = [["plant", book.plants], ["lot", book.lots], ["fabric", book.fabrics]] as const;
  return Object.fromEntries(lists.flatMap(([field, list]) => (list?.prefix ? [[field, maybeFigures(list.prefix.figures, list.prefix.share, places)]] : [])));
}

function stepsOf(fields: LayoutRow["fields"], step: (field: FieldName) => Step, prefixes: Prefixes, places: PlaceCosts): Step[] {
  const steps: Step[] = [];
  let between: Extract<Step, {between: string}>["between"] | null = null;
  for (const field of fields) {
    if (field === " " || field === "-" || field === "." || field === "/") {
      between = field;
      continue;
    }
    if (steps.length > 0) steps.push({between: between ?? ""});
    between = null;
    if (typeof field === "object") steps.push({spans: spansOf({texts: [{text: field.text.toUpperCase(), cost: 0}], figures: null}, places)});
    else steps.push(...(field in prefixes ? [{spans: prefixes[field]!}] : []), step(field));
  }
  return steps;
}
