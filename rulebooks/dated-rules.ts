// Every window of a book with what it belongs to, in the order of the book: for checks, charts and lists.
import type {Book, Cite, Mark, Value, WindowText} from "../engine/rule/schema.ts";
import type {Path} from "./place.ts";

/** A window of a book and what it belongs to. */
export interface DatedRule {
  /** Where the window stands in the book. */
  readonly path: Path;
  /** The mark, list or schemes that it stands among: "marks.zip", "labels", "plants". */
  readonly family: string;
  readonly familyName: string;
  readonly name: string;
  readonly window: WindowText;
  readonly cite: Cite;
  /** Height outside the window, with its place; null where none can be given. */
  readonly outside: {readonly height: number; readonly path: Path} | null;
}

/** Every window of a book. */
export function datedRules(book: Book): DatedRule[] {
  const schemes = Object.entries(book.schemes).map(
    ([id, {name, window, source}]): DatedRule => ({path: ["schemes", id, "window"], family: "schemes", familyName: "How dates were written", name, window, cite: source, outside: null}),
  );
  const lists = (["plants", "lots", "fabrics"] as const).flatMap((kind) => ofList(book, kind));
  return [...ofLabels(book), ...Object.entries(book.marks).flatMap(([id, mark]) => ofMark(id, mark)), ...schemes, ...lists];
}

function ofLabels({labels}: Book): DatedRule[] {
  if (!labels) return [];
  const {name, source} = labels;
  return Object.entries(labels.kinds).flatMap(([id, kind]) => ofValue(["labels", "kinds", id], {family: "labels", familyName: name}, kind, source));
}

function ofMark(id: string, mark: Mark): DatedRule[] {
  const path = ["marks", id];
  const family = {family: `marks.${id}`, familyName: mark.name};
  if (mark.kind === "choice") return Object.entries(mark.values).flatMap(([value, rule]) => ofValue([...path, "values", value], family, rule, mark.source));
  if (mark.kind !== "presence" && mark.kind !== "repeat") return [];
  const outside = {height: mark.outside, path: [...path, "outside"]};
  const rule = {family: "seen or not", familyName: "Details, seen or not", path: [...path, "window"], name: mark.name, window: mark.window, cite: mark.source, outside};
  return [rule, ...variantsOf(path, mark.kind === "presence" ? mark.variants : [], rule)];
}

function ofValue(path: Path, family: Pick<DatedRule, "family" | "familyName">, value: Value, source: Cite): DatedRule[] {
  const {name, window, outside} = value;
  const rule = {...family, path: [...path, "window"], name, window, cite: value.source ?? source, outside: {height: outside, path: [...path, "outside"]}};
  return [rule, ...variantsOf(path, value.variants, rule)];
}

function variantsOf(path: Path, variants: Value["variants"], rule: DatedRule): DatedRule[] {
  return variants.map(({when, window, source}, i) => {
    const only = Object.values(when).flat().join(", ");
    return {...rule, path: [...path, "variants", i, "window"], name: `${rule.name} (${only})`, window, cite: source ?? rule.cite, outside: null};
  });
}

function ofList(book: Book, kind: "plants" | "lots" | "fabrics"): DatedRule[] {
  const list = book[kind];
  if (!list) return [];
  const family = {family: kind, familyName: {plants: "Plants", lots: "Lots", fabrics: "Fabrics"}[kind]};
  const codes = Object.entries(list.codes).map(
    ([code, {name, window, source}]): DatedRule => ({...family, path: [kind, "codes", code, "window"], name: name ? `${code} ${name}` : code, window, cite: source ?? list.source, outside: null}),
  );
  const widths = list.widths.map(
    ({window, shares}, i): DatedRule => ({...family, path: [kind, "widths", i, "window"], name: `codes of ${Object.keys(shares).join(", ")} figures`, window, cite: list.source, outside: null}),
  );
  return [...widths, ...codes];
}
