// A rule book in the order in which it is read: labels, each mark, how dates were written, lists of codes; every rule with its window and its source.
import type {Book, Cite, Mark, Source, WindowText} from "../../engine/rule/schema.ts";
import {parseMonth, sayMonth} from "../../engine/month/month.ts";
import {datedRules, type DatedRule} from "../../rulebooks/dated-rules.ts";

export interface RuleLine {
  readonly key: string;
  readonly name: string;
  /** In words; null for a rule without months of its own. */
  readonly when: string | null;
  readonly says: string | null;
  readonly cite: Cite;
  readonly source: Source | null;
}

export interface Section {
  /** The mark's id, or "label", "schemes", "plants", "lots", "fabrics"; stands behind # in the address. */
  readonly id: string;
  readonly name: string;
  readonly says: string | null;
  readonly caution: string | null;
  /** Where on the garment, and how to look. */
  readonly place: string | null;
  readonly look: string | null;
  readonly cite: Cite | null;
  readonly source: Source | null;
  readonly rules: readonly RuleLine[];
}

/** How a number came to be known, in words. */
export const howKnown: Readonly<Record<Cite["how"], string>> = {read: "read in the source", part: "partly read in the source", memory: "from memory", inferred: "own judgement"};

export function sectionsOf(book: Book): Section[] {
  const rules = datedRules(book);
  const lines = (id: string) => rules.filter(({path: [top, mark]}) => id === (top === "marks" ? mark : top === "labels" ? "label" : top)).map((rule) => lineOf(rule, book));
  const ofMark = (id: string, mark: Mark): Section => ({...aboutMark(id, mark, book), rules: [...lines(id), ...withoutMonths(mark, book)]});
  const plain = (id: string, name: string): Section => ({id, name, says: null, caution: null, place: null, look: null, cite: null, source: null, rules: lines(id)});
  return [
    ...(book.labels ? [{...aboutMark("label", book.labels, book), rules: lines("label")}] : []),
    ...Object.entries(book.marks).map(([id, mark]) => ofMark(id, mark)),
    ...[plain("schemes", "How dates were written"), plain("plants", "Plants"), plain("lots", "Lots"), plain("fabrics", "Fabrics")].filter((section) => section.rules.length > 0),
  ];
}

/** The sections that speak of all the words, with only the rules that do when the section's own head does not. */
export function findIn(sections: readonly Section[], words: string): Section[] {
  const wanted = words.toLowerCase().split(/\s+/).filter((word) => word !== "");
  const speaks = (texts: readonly (string | null | undefined)[]) => {
    const text = texts.filter((one) => one).join(" ").toLowerCase();
    return wanted.every((word) => text.includes(word));
  };
  return sections.flatMap((section) => {
    const head = [section.name, section.id, section.says, section.place];
    if (speaks(head)) return [section];
    const rules = section.rules.filter(({name, when, says, source, cite}) => speaks([...head, name, when, says, source?.title, cite.at]));
    return rules.length > 0 ? [{...section, rules}] : [];
  });
}

/** A window as it is said: "first seen March 1968, usual from September 1968; usual to January 1977, last seen June 1978". */
export function sayWindowAloud({begins, ends}: WindowText): string {
  const say = (text: string) => sayMonth(parseMonth(text)!);
  const pair = ([a, b]: readonly [string, string], one: string, first: string, second: string) => (a === b ? `${one} ${say(a)}` : `${first} ${say(a)}, ${second} ${say(b)}`);
  const parts = [...(begins ? [pair(begins, "from", "first seen", "usual from")] : []), ...(ends ? [pair(ends, "to", "usual to", "last seen")] : [])];
  return parts.join("; ") || "at any time";
}

function aboutMark(id: string, mark: Omit<Mark, "kind"> | NonNullable<Book["labels"]>, book: Book): Omit<Section, "rules"> {
  const {name, says, caution, place, source} = mark;
  return {id, name, says: says ?? null, caution: caution ?? null, place: book.places[place]?.name ?? place, look: book.places[place]?.look ?? null, cite: source, source: sourceOf(source, book)};
}

function lineOf({path, name, window, cite}: DatedRule, book: Book): RuleLine {
  return {key: path.slice(0, -1).join("."), name, when: sayWindowAloud(window), says: saysAt(path, book), cite, source: sourceOf(cite, book)};
}

/** What a value of a choice says for itself. */
function saysAt([top, id, part, value]: DatedRule["path"], book: Book): string | null {
  const holder = top === "labels" ? book.labels?.kinds[String(part)] : top === "marks" && part === "values" ? valueOf(book.marks[String(id)], String(value)) : undefined;
  return holder?.says ?? null;
}

const valueOf = (mark: Mark | undefined, value: string) => (mark?.kind === "choice" ? mark.values[value] : undefined);

/** Marks whose months follow from a number or a code that stands on them. */
function withoutMonths(mark: Mark, book: Book): RuleLine[] {
  const source = sourceOf(mark.source, book);
  if (mark.kind === "serial") {
    return mark.knots.map(({month, number, how}) => ({key: `knot ${month}`, name: `number ${number.toLocaleString()}`, when: `first issued about ${sayMonth(parseMonth(month)!)}`, says: null, cite: {...mark.source, how}, source}));
  }
  if (mark.kind !== "coded") return [];
  return mark.schemes.map((id) => ({key: `scheme ${id}`, name: book.schemes[id]?.name ?? id, when: null, says: book.schemes[id]?.note ?? null, cite: mark.source, source}));
}

const sourceOf = (cite: Cite, {sources}: Book): Source | null => (Object.hasOwn(sources, cite.ref) ? sources[cite.ref]! : null);
