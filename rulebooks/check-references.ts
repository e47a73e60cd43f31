// Checks that every name in a book points at something that is there.
import type {Problem} from "../engine/problem.ts";
import type {Book, CodeList, Labels, Mark, Value, When} from "../engine/rule/schema.ts";
import type {Path, Where} from "./place.ts";
import * as say from "./problems.ts";

/** What every garment can show beside the marks that a book names. */
export const labelMarks = {label: "the kind of label", rows: "the printed rows of the label"} as const;

type Kind = "source" | "place" | "piece" | "scheme" | "mark" | "market" | "plant" | "lot" | "label kind";
type Point = (kind: Kind, given: string | undefined, path: Path) => void;

/** Checks sources, places, pieces, schemes, groups and conditions. Garment types are free words. */
export function checkReferences(book: Book, where: Where): Problem[] {
  const problems: Problem[] = [];
  const names = namesOf(book);
  const point: Point = (kind, given, path) => {
    if (given === undefined || names[kind].includes(given)) return;
    problems.push(kind === "source" ? say.unlistedSource(where(path), given, names.source) : say.unknownName(where(path), kind, given, names[kind]));
  };
  if (book.labels) pointLabels(book.labels, point);
  for (const [id, mark] of Object.entries(book.marks)) pointMark(mark, ["marks", id], point);
  for (const [id, scheme] of Object.entries(book.schemes)) {
    point("source", scheme.source.ref, ["schemes", id, "source", "ref"]);
    pointWhen(scheme.when, ["schemes", id, "when"], point);
  }
  for (const list of ["plants", "lots", "fabrics"] as const) if (book[list]) pointList(book[list], list, point);
  for (const [id, group] of Object.entries(book.groups)) group.marks.forEach((mark, i) => point("mark", mark, ["groups", id, "marks", i]));
  return problems;
}

function namesOf(book: Book): Record<Kind, string[]> {
  return {
    source: Object.keys(book.sources), place: Object.keys(book.places), piece: Object.keys(book.pieces), scheme: Object.keys(book.schemes),
    mark: [...Object.keys(book.marks), ...(book.labels ? Object.keys(labelMarks) : [])],
    market: Object.keys(book.markets), plant: Object.keys(book.plants?.codes ?? {}), lot: Object.keys(book.lots?.codes ?? {}),
    "label kind": Object.keys(book.labels?.kinds ?? {}),
  };
}

function pointMark(mark: Mark, path: Path, point: Point): void {
  pointCommon(mark, path, point);
  if (mark.kind === "choice") for (const [id, value] of Object.entries(mark.values)) pointValue(value, [...path, "values", id], point);
  if (mark.kind === "presence") pointVariants(mark.variants, path, point);
  if (mark.kind === "coded") mark.schemes.forEach((scheme, i) => point("scheme", scheme, [...path, "schemes", i]));
}

function pointLabels(labels: Labels, point: Point): void {
  pointCommon(labels, ["labels"], point);
  for (const [id, kind] of Object.entries(labels.kinds)) {
    const path = ["labels", "kinds", id];
    pointValue(kind, path, point);
    kind.schemes?.forEach((scheme, i) => point("scheme", scheme, [...path, "schemes", i]));
  }
}

function pointCommon({place, piece, source, when}: Pick<Mark, "place" | "piece" | "source" | "when">, path: Path, point: Point): void {
  point("place", place, [...path, "place"]);
  point("piece", piece, [...path, "piece"]);
  point("source", source.ref, [...path, "source", "ref"]);
  pointWhen(when, [...path, "when"], point);
}

function pointValue({source, variants}: Value, path: Path, point: Point): void {
  point("source", source?.ref, [...path, "source", "ref"]);
  pointVariants(variants, path, point);
}

function pointVariants(variants: Value["variants"], path: Path, point: Point): void {
  variants.forEach(({when, source}, i) => {
    point("source", source?.ref, [...path, "variants", i, "source", "ref"]);
    pointWhen(when, [...path, "variants", i, "when"], point);
  });
}

function pointList({source, codes}: CodeList, list: string, point: Point): void {
  point("source", source.ref, [list, "source", "ref"]);
  for (const [code, entry] of Object.entries(codes)) point("source", entry.source?.ref, [list, "codes", code, "source", "ref"]);
}

function pointWhen(when: When | undefined, path: Path, point: Point): void {
  for (const [key, kind] of [["market", "market"], ["plant", "plant"], ["lot", "lot"], ["label", "label kind"]] as const) {
    const given = when?.[key];
    if (Array.isArray(given)) given.forEach((one, i) => point(kind, one, [...path, key, i]));
    else point(kind, given, [...path, key]);
  }
}
