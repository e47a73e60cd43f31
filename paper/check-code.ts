// Compares a code from a printed sheet with the rack, or with a file that was taken out of one.
import {z} from "zod";
import {mostPhotos} from "../commands/paper/choices.ts";
import type {Rack} from "../commands/rack/rack.ts";
import type {Problem} from "../engine/index.ts";
import {grades} from "../state/model.ts";
import {contentSchema, recordSchema} from "../store/model.ts";
import type {Store} from "../store/store.ts";
import {checkSheet, type Candidate, type Checked} from "./fact/check.ts";
import type {SheetTerms} from "./fact/facts.ts";
import {readCode, type ReadCode} from "./fact/sheet-code.ts";
import * as say from "./problems.ts";

export const checkSchema = z.strictObject({
  code: z.string().min(1).max(4000).describe("what the square code of the sheet says, or the letters below it"),
  number: z.string().max(100).optional().describe("the garment's number, when only the letters are given"),
  on: z.iso.date().optional().describe("the day of the sheet, when only the letters are given"),
  record: z.unknown().optional().describe("a garment taken out of a rack, or a whole export as JSON; the rack itself when left out"),
});
export type CheckWish = z.output<typeof checkSchema>;

export type CheckAnswer =
  | {readonly answer: Checked & {readonly garment: {readonly id: string | null; readonly number: string}; readonly on: string}; readonly problems?: undefined}
  | {readonly answer?: undefined; readonly problems: readonly Problem[]; readonly unknown?: boolean};

/** What is needed to compare; without a store only a file can be compared with. */
export interface CheckBeside extends Pick<Rack, "date"> {
  readonly store: Pick<Store, "get" | "byNumber" | "history"> | null;
}

export async function checkCode({code, number, on, record}: CheckWish, rack: CheckBeside): Promise<CheckAnswer> {
  const read = readCode(code);
  if (!read) return {problems: [say.notCode(code)]};
  const wanted = read.code ? {id: read.code.id, number: read.code.number, on: read.code.terms.on} : {id: "", number: number ?? "", on: on ?? ""};
  if (wanted.number === "" || wanted.on === "") return {problems: [say.needsGarment()]};
  const found = record === undefined ? await onRack(wanted, rack) : inFile(record, wanted.number);
  if (found.problems) return found;
  if (found.candidates.length === 0) return {problems: [say.noSuchGarment(wanted.number)], unknown: true};
  const dated = await anew(found.candidates, rack);
  return {answer: {...checkSheet(read, dated, waysOf(read, wanted.on)), garment: {id: found.id, number: wanted.number}, on: wanted.on}};
}

type Found = {readonly id: string | null; readonly candidates: readonly Candidate[]; readonly problems?: undefined} | {readonly problems: readonly Problem[]};

/** The garment as it is kept, then each earlier step, the newest first. */
async function onRack({id, number}: {readonly id: string; readonly number: string}, {store}: CheckBeside): Promise<Found> {
  if (!store) return {id: null, candidates: []};
  const record = (id === "" ? null : await store.get(id)) ?? (await store.byNumber(number));
  if (!record) return {id: null, candidates: []};
  const steps = await store.history(record.id);
  return {id: record.id, candidates: [...steps].reverse().map(({content, rev, at}) => ({content, rev, at}))};
}

/** One garment, a record with its revision, or an export with many. */
function inFile(given: unknown, number: string): Found {
  const all = Array.isArray(given) ? given : [given];
  const read = all.map((one) => {
    const record = recordSchema.safeParse(one);
    return record.success ? {success: true as const, data: {content: record.data.content, rev: record.data.rev, at: record.data.changedAt}} : contentOf(one);
  });
  const fits = read.flatMap((one) => (one.success ? [one.data] : []));
  if (fits.length === 0) {
    const [first] = read;
    const issue = first && !first.success ? first.error.issues[0] : undefined;
    return {problems: [say.notRecord(issue ? `${issue.path.join(".") || "file"}: ${issue.message}` : "it is empty")]};
  }
  return {id: null, candidates: fits.filter(({content}) => content.garment.garment === number)};
}

function contentOf(given: unknown) {
  const content = contentSchema.safeParse(given);
  return content.success ? {success: true as const, data: {content: content.data, rev: null, at: null}} : content;
}

/** The newest with its date worked out anew, too: the sheet may have been printed before it was dated again. */
async function anew(candidates: readonly Candidate[], {date}: CheckBeside): Promise<Candidate[]> {
  const [first, ...rest] = candidates;
  const [dated] = await date([first!.content.garment]);
  return [dated?.dating ? {...first!, dating: dated.dating} : first!, ...rest];
}

/** Of a sheet known by its letters alone: every way in which it may have been made. */
function waysOf(read: ReadCode, on: string): SheetTerms[] {
  if (read.code) return [];
  return Array.from({length: mostPhotos + 1}, (_, photos) => [null, ...grades].map((grade) => ({on, photos, grade, worth: null}))).flat();
}

