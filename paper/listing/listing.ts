// Composes listing text from what was examined and from nothing else: parts in the owner's order, each as facts and as sentences.
import {sayOdds} from "../../engine/index.ts";
import {printMoney} from "../../commands/rack/table/money-cell.ts";
import {listingTemplateSchema, type ListingBlock, type ListingTemplate, type Placeholder} from "../../commands/paper/listing-template.ts";
import {datedReading, nameOf} from "../sheet/evidence.ts";
import type {Material} from "../sheet/material.ts";
import {clothEntry, measureEntries} from "../sheet/measure-words.ts";
import {capital, makerName, sentence, shortMonth} from "../sheet/say.ts";
import type {Entry} from "../sheet/sheet.ts";
import {gradeWord, stateEntries} from "../sheet/state-words.ts";
import {oddWords} from "../sheet/verdict-words.ts";

/** A part of a listing. */
export interface Part {
  readonly block: ListingBlock | "intro" | "outro" | "estimate";
  /** Empty where the words need none. */
  readonly head: string;
  readonly lines: readonly string[];
}

export interface Listing {
  readonly title: string;
  readonly parts: readonly Part[];
}

export const usualTemplate: ListingTemplate = listingTemplateSchema.parse({});

/** What a buyer must be told whatever the template says; each is added behind the last part when it is left out there. */
const always: readonly ListingBlock[] = ["odd marks", "state"];

/** Words that a listing ends with. */
const estimate = "The date is an estimate from the marks named here, no guarantee and no certified appraisal.";

export function composeListing(material: Material, template: ListingTemplate = usualTemplate): Listing {
  const {garment} = material.content;
  const wanted = [...template.blocks, ...always.filter((block) => !template.blocks.includes(block))];
  const parts: Part[] = [
    {block: "intro", head: "", lines: filled(template.intro, material)},
    ...wanted.map((block): Part => ({block, ...write[block](material, template)})),
    {block: "outro", head: "", lines: filled(template.outro, material)},
    {block: "estimate", head: "", lines: material.finding.ledger.length === 0 ? [] : [estimate]},
  ];
  return {title: titleOf(material) || garment.garment, parts: parts.filter(({lines}) => lines.length > 0)};
}

type Write = (material: Material, template: ListingTemplate) => Omit<Part, "block">;

const write: Readonly<Record<ListingBlock, Write>> = {
  "heading": (material) => ({head: "", lines: [`${titleOf(material)}${titleOf(material) === "" ? "No" : ", no"}. ${material.content.garment.garment}`]}),
  "date": (material, {voice}) => ({head: "Made", lines: voice === "short" ? [shortDate(material)] : spokenDate(material)}),
  "reasons": ({finding}, {voice}) => {
    const told = finding.ledger.filter(({mark, bits}) => bits >= 0.05 && !finding.odd.some(({id}) => id === mark)).slice(0, 4).map(({mark}) => nameOf(finding, mark)).map(({name, seen}) => `${name}${seen === null ? "" : `: ${seen}`}`);
    if (told.length === 0) return {head: "Why", lines: []};
    return {head: "Why", lines: voice === "short" ? told : [sentence(`the date rests on ${told.map(small).join("; ")}`)]};
  },
  "odd marks": ({finding}) => ({head: "What does not fit", lines: oddWords(finding)}),
  "measurements": ({content: {garment, sizes}}, {voice, units}) => {
    const entries = measureEntries(garment.type, sizes, units);
    if (entries.length === 0) return {head: "Measurements", lines: []};
    return {head: "Measurements", lines: [...entries.map(asLine), ...(voice === "spoken" ? ["Measured by hand on a flat table; cloth gives a little."] : [])]};
  },
  "cloth": ({content: {sizes}}) => ({head: "", lines: clothEntry(sizes).map(asLine)}),
  "state": ({content: {state}, graded, rule}) => {
    const entries = stateEntries(state, graded, rule);
    return {head: "State", lines: entries.length > 0 ? joined(entries).map(asLine) : ["Its state was not written down: ask before you buy."]};
  },
  "note": ({content: {garment}}) => ({head: "", lines: (garment.note ?? "").split("\n").filter((line) => line.trim() !== "")}),
  "price": ({content: {asked}}) => ({head: "", lines: asked ? [`Price: ${printMoney(asked)}`] : []}),
};

/** Entries that go on from the one before are put into it: one line for all flaws. */
function joined(entries: readonly Entry[]): Entry[] {
  const all: Entry[] = [];
  for (const {name, text} of entries) {
    const last = all.at(-1);
    if (name === "" && last) all[all.length - 1] = {name: last.name, text: `${last.text}; ${text}`};
    else all.push({name, text});
  }
  return all;
}

const asLine = ({name, text}: Entry) => `${capital(name)}: ${text}`;
const small = (words: string) => (/^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words);

function titleOf({content: {garment}}: Material): string {
  return capital(garment.title ?? garment.type ?? "");
}

function shortDate({dating, finding}: Material): string {
  if (finding.ledger.length === 0) return "not dated";
  const bounds = `no earlier than ${shortMonth(dating.noEarlier)}, no later than ${shortMonth(dating.noLater)}`;
  if (dating.kind === "cannot tell") return `not settled: the marks leave ${dating.words} open`;
  return dating.kind === "two dates" ? `most likely a later reproduction (${sayOdds(dating.probability)}): ${dating.words}` : `most likely ${dating.words} (${sayOdds(dating.probability)}); ${bounds}`;
}

/** Honest words: how sure it is stands in the same sentence as the date. */
function spokenDate(material: Material): string[] {
  const {dating, finding, books} = material;
  const {kind, words, probability, sureness, noEarlier, noLater, maker, plant} = dating;
  if (finding.ledger.length === 0) return ["Nothing was seen on it that tells a date."];
  const by = maker === null ? "" : ` by ${makerName(books, maker)}`;
  if (kind === "cannot tell") return [`When it was made cannot be told: the marks seen leave ${words} open.`];
  if (kind === "two dates") return [`Most likely a later reproduction (${sayOdds(probability)}): ${words}.`];
  const how = sureness === "sure" ? "Made" : sureness === "likely" ? "Most likely made" : "Perhaps made";
  const at = plant === null || datedReading(finding) === undefined ? "" : `, at its plant ${plant}`;
  const bounds = noEarlier === noLater ? "" : ` It is no earlier than ${shortMonth(noEarlier)} and no later than ${shortMonth(noLater)}.`;
  return [`${how}${by} in ${words}${at}: the marks speak for that with ${sayOdds(probability)}.${bounds}`];
}

/** The owner's own words with the garment's in the place of those in braces; a line whose braces all stand for nothing is left out. */
function filled(text: string, material: Material): string[] {
  const values = placeholderValues(material);
  return text.split("\n").flatMap((line) => {
    const asked = [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name as Placeholder);
    if (asked.length > 0 && asked.every((name) => values[name] === "")) return [];
    const told = line.replace(/\{(\w+)\}/g, (_, name: Placeholder) => values[name] ?? "").trimEnd();
    return told.trim() === "" ? [] : [told];
  });
}

export function placeholderValues({content, dating, finding, books, graded, owner}: Material): Readonly<Record<Placeholder, string>> {
  const {garment, sizes, asked} = content;
  const dated = finding.ledger.length > 0 && dating.kind !== "cannot tell";
  return {
    number: garment.garment, title: garment.title ?? "", type: garment.type ?? "",
    maker: dating.maker === null ? "" : makerName(books, dating.maker),
    date: dated ? dating.words : "", odds: dated ? sayOdds(dating.probability) : "",
    size: sizes?.tag?.text ?? "", grade: gradeWord(graded).toLowerCase(), price: asked ? printMoney(asked) : "", shop: owner.name,
  };
}
