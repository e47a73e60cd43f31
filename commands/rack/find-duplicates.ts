// Finds garments that are likely on the rack twice, and says why each pair or group is suspected.
import {z} from "zod";
import {writtenRow} from "../../engine/index.ts";
import {recordSchema, type GarmentRecord} from "../../store/model.ts";
import {allRecords} from "./all-records.ts";
import {rackCommand} from "./rack-command.ts";

/** A code that more garments share than this is a size or a lot, and tells nothing. Source: own choice. */
const mostSharing = 4;
/** Marks that must agree before two garments without a common code are suspected. Source: own choice. */
const fewestMarks = 5;

const groupSchema = z.strictObject({ids: z.array(recordSchema.shape.id).min(2), why: z.string(), likeness: z.number().min(0).max(1)});
type Group = z.infer<typeof groupSchema>;

interface Sign {
  readonly key: string;
  readonly why: string;
  readonly likeness: number;
}

export const findDuplicates = rackCommand({
  name: "rack.duplicates",
  summary: "find garments that are likely on the rack twice, and say why",
  route: {method: "get", path: "/api/rack/duplicates"},
  input: z.strictObject({}),
  output: z.array(groupSchema),
  async run(_input, {store}) {
    const bySign = new Map<string, {sign: Sign; ids: string[]}>();
    for await (const {id, removed, content} of allRecords(store)) {
      if (removed) continue;
      for (const sign of signsOf(content)) {
        const found = bySign.get(sign.key);
        if (found) found.ids.push(id);
        else bySign.set(sign.key, {sign, ids: [id]});
      }
    }
    return {answer: groupsOf([...bySign.values()])};
  },
});

/** The strongest reason for each set of garments; several reasons make it likelier. */
function groupsOf(shared: readonly {readonly sign: Sign; readonly ids: readonly string[]}[]): Group[] {
  const groups = new Map<string, {ids: readonly string[]; signs: Sign[]}>();
  for (const {sign, ids} of shared) {
    const several = [...new Set(ids)];
    if (several.length < 2 || several.length > mostSharing) continue;
    const key = several.toSorted().join();
    const group = groups.get(key) ?? {ids: several, signs: []};
    group.signs.push(sign);
    groups.set(key, group);
  }
  return [...groups.values()]
    .map(({ids, signs}) => {
      const strongest = signs.toSorted((a, b) => b.likeness - a.likeness);
      const why = [...new Set(strongest.map((sign) => sign.why))].slice(0, 4).join("; ");
      return {ids: [...ids], why, likeness: Number((1 - strongest.reduce((left, {likeness}) => left * (1 - likeness), 1)).toFixed(3))};
    })
    .filter(({likeness}) => likeness >= 0.5)
    .sort((a, b) => b.likeness - a.likeness);
}

/**
 * Everything that two entries for one garment would share. Each garment gives a few signs, which are looked up: the cost grows with the rack, not with its square.
 * Likenesses are rough chances that two entries of one sign are one garment. Source: own choice, to order the list by.
 */
function signsOf({garment, photos}: GarmentRecord["content"]): Sign[] {
  const {rows = [], ...marks} = garment.saw;
  const signs: Sign[] = [{key: `number ${garment.garment.trim().toLowerCase()}`, why: `both carry the number ${garment.garment}`, likeness: 0.6}];
  for (const {photo} of photos) signs.push({key: `photo ${photo}`, why: "they share a photo", likeness: 0.9});
  const printed = rows.map((row) => writtenRow(row).text);
  const codes = printed.map((row) => ({row, code: bare(row)})).filter(({code}) => isCode(code));
  const told = codes.map(({code}) => code);
  if (told.length > 1) signs.push({key: `rows ${told.toSorted().join("|")}`, why: `the same rows of the label: ${printed.join(" | ")}`, likeness: 0.7});
  for (const {row, code} of codes) signs.push({key: `row ${code}`, why: `the same row “${row}”`, likeness: code.length >= 8 ? 0.5 : 0.3});
  const seen = Object.entries(marks).map(([id, value]) => [id, JSON.stringify(value)] as const).sort(([a], [b]) => (a < b ? -1 : 1));
  for (const [id, value] of seen) if (isCode(bare(value)) && bare(value).length >= 5) signs.push({key: `mark ${id} ${bare(value)}`, why: `the same ${id} ${value}`, likeness: 0.5});
  const all = [...seen.map(([id, value]) => `${id}=${value}`), ...told.map((code) => `row=${code}`)];
  if (all.length >= fewestMarks) {
    const owner = [garment.maker ?? [], garment.type ?? []].flat().join();
    signs.push({key: `all ${owner} ${all.join("&")}`, why: `all ${all.length} marks are the same`, likeness: 0.8});
    // Without one mark each: two garments that differ in a single mark share one of these.
    for (let left = 0; left < all.length; left++) signs.push({key: `but ${owner} ${all.filter((_, i) => i !== left).join("&")}`, why: `all marks but one are the same`, likeness: 0.5});
  }
  return signs;
}

/** What is left of a print when blanks, dashes and case do not count. */
const bare = (text: string) => text.toLowerCase().replace(/[^a-z0-9]/g, "");

/** Digits enough that two garments rarely share them by chance. */
const isCode = (text: string) => text.replace(/\D/g, "").length >= 3;
