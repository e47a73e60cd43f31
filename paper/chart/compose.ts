// Composes the wall chart of a rule book: when each label and each detail was in use, how its codes are read, and where to look first.
import {parseMonth, sayWindow, type Book, type MonthIndex} from "../../engine/index.ts";
import {month} from "../../engine/month/month.ts";
import type {LayoutRow} from "../../engine/rule/schema.ts";
import {datedRules, type DatedRule} from "../../rulebooks/dated-rules.ts";
import type {Span} from "../../engine/window/window.ts";
import {capital, sayUse, sentence} from "../sheet/say.ts";
import {familyHead, isOn, layoutBlock, sectionHead, specimenBlock, textBlock, windowRow, type Block} from "./blocks.ts";
import {sayParts, specimens} from "./scheme-words.ts";

export interface WallChart {
  readonly title: string;
  readonly about: string;
  /** Blocks for a column of this width. */
  readonly blocks: (width: number) => Block[];
}

/** @param today  the last month that a chart shows of what is still in use */
export function composeChart(book: Book, today: MonthIndex): WallChart {
  const axis = axisOf(book, today);
  const rules = datedRules(book).filter((rule) => !rule.path.includes("widths") && !rule.path.includes("variants") && isOn(rule, axis));
  const of = (...families: readonly string[]) => rules.filter(({family}) => families.includes(family));
  return {
    title: book.title,
    about: `Edition ${book.edition}, ${1900 + Math.floor(axis.from / 12)} to ${1900 + Math.floor(axis.until / 12)}. Full stitches: usual. Thin stitches: coming in or dying out. Bar tacks: where use became usual, and where it ceased to be.`,
    blocks: (width) => [
      ...windows("Labels and when they were sewn in", of("labels"), axis, width),
      ...codes(book, width),
      ...layouts(book, width),
      ...looks(book, width),
      ...windows("Details", rules.filter(({family}) => !["labels", "schemes", "plants", "lots", "fabrics"].includes(family)), axis, width),
      ...windows("Plants, lots and cloths", of("plants", "lots", "fabrics"), axis, width),
    ],
  };
}

function axisOf(book: Book, today: MonthIndex): Span {
  const years = datedRules(book).flatMap(({window}) => [window.begins?.[0], window.ends?.[0]]).filter((text) => text != null).map((text) => Number(text.slice(0, 4)));
  const last = book.covers.until ? Math.min(today, parseMonth(book.covers.until)!) : today;
  const from = Math.max(Number(book.covers.from.slice(0, 4)), Math.min(...years, 1900 + Math.floor(last / 12)));
  return {from: month(from, 1), until: month(1900 + Math.floor(last / 12), 12)};
}

/** Families as the book has them, each with its earliest first. */
function windows(name: string, rules: readonly DatedRule[], axis: Span, width: number): Block[] {
  if (rules.length === 0) return [];
  const families = grouped(rules);
  const start = ({window}: DatedRule) => `${window.begins?.join() ?? ""} ${window.ends?.join() ?? "9"}`;
  return [
    sectionHead(name, width),
    ...[...families].flatMap(([family, list]) => [familyHead(capital(family), axis, width), ...[...list].sort((a, b) => (start(a) < start(b) ? -1 : 1)).map((rule) => windowRow(rule, axis, width))]),
  ];
}

function codes({schemes}: Book, width: number): Block[] {
  const all = Object.values(schemes);
  if (all.length === 0) return [];
  return [
    sectionHead("How the date was written", width),
    ...all.flatMap((scheme) => [
      textBlock(capital(scheme.name), width, {bold: true, size: 9.6, keep: true}),
      textBlock(`${sentence(sayParts(scheme.parts))} ${sayUse(sayWindow(scheme.window))}`, width, {keep: true, after: 2}),
      ...(Object.keys(scheme.reads).length > 0 ? [specimenBlock(specimens(scheme), width)] : []),
      ...(scheme.note ? [textBlock(sentence(scheme.note), width, {quiet: true, size: 8.2, after: 6})] : []),
    ]),
  ];
}

function layouts({labels}: Book, width: number): Block[] {
  const kinds = Object.values(labels?.kinds ?? {}).filter(({rows}) => rows.length > 0);
  if (kinds.length === 0) return [];
  return [
    sectionHead("What stands where on a label", width),
    ...kinds.flatMap(({name, says, rows}) => [
      textBlock(capital(name), width, {bold: true, size: 9, keep: true}),
      ...(says ? [textBlock(sentence(says), width, {quiet: true, size: 8.2, after: 2, keep: true})] : []),
      layoutBlock(rows.map(({at, fields}) => ({at: at ?? "", fields: fieldNames(fields)})), width),
    ]),
  ];
}

/** Fields as boxes, signs between them as signs; a gap needs none. */
const fieldNames = (fields: LayoutRow["fields"]): string[] => fields.flatMap((field) => (typeof field === "object" ? [field.text] : field === " " ? [] : field === "fabric" ? ["cloth"] : [field]));

/** Where to look, the least trouble first. */
function looks(book: Book, width: number): Block[] {
  const marks = [...Object.values(book.marks), ...(book.labels ? [book.labels] : [])];
  const places = Object.entries(book.places)
    .map(([id, place]) => ({...place, marks: marks.filter((mark) => mark.place === id)}))
    .filter((place) => place.marks.length > 0)
    .sort((a, b) => a.effort - b.effort || b.marks.length - a.marks.length);
  if (places.length === 0) return [];
  return [
    sectionHead("Where to look, the least trouble first", width),
    ...places.flatMap(({name, look, cost, marks: held}) => [
      textBlock(capital(name), width, {bold: true, size: 9, keep: true}),
      textBlock(`${sentence(look)}${cost === "opens a seam" ? " Opens a seam: only when nothing else settles it." : ""}`, width, {keep: true}),
      textBlock(`Tells: ${held.slice(0, 4).map((mark) => mark.name).join("; ")}${held.length > 4 ? ` and ${held.length - 4} more` : ""}.`, width, {quiet: true, size: 8.2, after: 4}),
    ]),
  ];
}

function grouped(rules: readonly DatedRule[]): Map<string, DatedRule[]> {
  const families = new Map<string, DatedRule[]>();
  for (const rule of rules) families.set(rule.familyName, [...(families.get(rule.familyName) ?? []), rule]);
  return families;
}
