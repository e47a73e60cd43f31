// What each field of a label's rows can print, by the book: dates in every month of a scheme, listed codes, figures.
import {loneScheme, monthIndex, type Book} from "../../../engine/index.ts";
import type {LayoutRow} from "../../../engine/rule/schema.ts";
import type {PartText, ReadyScheme} from "../../../engine/scheme/scheme.ts";
import type {Stated} from "../../../engine/scheme/stated.ts";

/** One text that a field can print. */
export interface FieldText {
  readonly text: string;
  /** How unlikely it is beforehand among the texts of its field, as a cost. */
  readonly cost: number;
}

/** Figures that no list names: how many, and what each costs beforehand. */
export interface FieldFigures {
  readonly from: number;
  readonly until: number;
  readonly cost: number;
}

/** All that a field can print. */
export interface FieldPrint {
  readonly texts: readonly FieldText[];
  readonly figures: FieldFigures | null;
}

export type FieldName = Extract<LayoutRow["fields"][number], string> extends infer F ? Exclude<F, " " | "-" | "." | "/"> : never;

const perFigure = Math.log(10);
/** An unlisted code where the book lists some. Source: own choice. */
const unlistedCode = Math.log(8);

/** @param schemes  ids of the schemes that may date the row */
export function fieldPrint(book: Book, field: FieldName, schemes: readonly string[]): FieldPrint {
  if (field === "date") return {texts: dateTexts(book, schemes), figures: null};
  if (field === "size" || field === "inspector" || field === "other") {
    const [from, until] = book.fields[field]?.figures ?? ({size: [2, 2], inspector: [1, 2], other: [1, 4]} as const)[field];
    return {texts: [], figures: {from, until, cost: perFigure}};
  }
  const list = field === "plant" ? book.plants : field === "lot" ? book.lots : book.fabrics;
  const widths = list?.widths.flatMap(({shares}) => Object.entries(shares).flatMap(([width, share]) => (share >= 0.04 ? [Number(width)] : []))) ?? [];
  const codes = Object.entries(list?.codes ?? {});
  const total = codes.reduce((sum, [, {weight}]) => sum + weight, 0);
  return {
    texts: codes.map(([text, {weight}]) => ({text, cost: Math.log(total / weight)})),
    figures: {from: Math.min(...widths, 4), until: Math.max(...widths, 1), cost: perFigure + (codes.length > 0 ? unlistedCode / 3 : 0)},
  };
}

const known = new WeakMap<Book, Map<string, readonly FieldText[]>>();

/** From 1900 to 2049: two figures of a year then mean one year. */
const years = {from: monthIndex(0), until: monthIndex(150 * 12 - 1)};

/** Every code that some month of the schemes' windows can have printed, with its gaps and without them. */
function dateTexts(book: Book, schemes: readonly string[]): readonly FieldText[] {
  let byScheme = known.get(book);
  if (!byScheme) known.set(book, (byScheme = new Map()));
  const all = new Map<string, number>();
  for (const id of schemes) {
    let texts = byScheme.get(id);
    if (!texts) byScheme.set(id, (texts = printable(loneScheme(book.schemes[id]!, years))));
    for (const {text, cost} of texts) all.set(text, Math.min(cost, all.get(text) ?? Infinity));
  }
  return [...all].map(([text, cost]) => ({text, cost}));
}

/** More codes than this are not listed: then the scheme narrows nothing down that a reader could use. Source: own choice. */
const mostCodes = 6000;

function printable(scheme: ReadyScheme): FieldText[] {
  if (scheme.parts.some((part) => "free" in part)) return [];
  const parts = scheme.parts as readonly (readonly PartText[])[];
  if (parts.reduce((product, part) => product * part.length, 1) > 60_000) return [];
  const texts = new Set<string>();
  const walk = (index: number, text: string, stated: Stated): void => {
    const part = parts[index];
    if (part) return part.forEach((one) => walk(index + 1, text + one.text, {...stated, ...one.states}));
    if (scheme.months(stated).at.length > 0) texts.add(text);
  };
  walk(0, "", {});
  if (texts.size === 0 || texts.size > mostCodes) return [];
  const cost = Math.log(texts.size);
  return [...texts].flatMap((text) => (text.includes(" ") ? [{text, cost}, {text: text.replaceAll(" ", ""), cost}] : [{text, cost}]));
}
