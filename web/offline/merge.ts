// Merges two changes of one garment that started from the same content: what only one side touched is taken, what both touched is asked.
import type {Measure} from "../../state/model.ts";
import type {Content} from "../../store/model.ts";

/** A part that both sides changed, each in their own way. */
export interface Clash {
  /** Where it stands: ["place"], ["garment", "saw", "zip"]. */
  readonly path: readonly string[];
  readonly mine: unknown;
  readonly theirs: unknown;
}

export interface Merged {
  /** Both changes in one; where they clash it has mine. */
  readonly content: Content;
  readonly clashes: readonly Clash[];
}

type Group = Readonly<Record<string, unknown>>;

/**
 * Merges part by part: details of the garment, each mark, length and answer for themselves; photos, tags and flaws one by one.
 * @param base  what both started from; null when that is no longer known, and then everything that differs is a clash
 * @example
 * mergeContent(base, {...base, place: "bench"}, {...base, tags: ["sold?"]}).clashes // -> []
 */
export function mergeContent(base: Content | null, mine: Content, theirs: Content): Merged {
  const clashes: Clash[] = [];
  const merged = mergeGroup(base as Group | null, mine as unknown as Group, theirs as unknown as Group, [], clashes);
  // A dating belongs to the marks it was made from; the one who saves makes a new one.
  return {content: merged as Content, clashes: clashes.filter(({path}) => path[0] !== "dating")};
}

/** The content with their side taken at one clash. */
export function takeTheirs(content: Content, {path, theirs}: Clash): Content {
  return put(content as unknown as Group, path, theirs) as Content;
}

/** Whether two parts of a content say the same, whatever the order of their entries. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((one, i) => same(one, b[i]));
  if (!isGroup(a) || !isGroup(b)) return false;
  return keysOf(a, b).every((key) => same(a[key], b[key]));
}

function mergeGroup(base: Group | null, mine: Group, theirs: Group, path: readonly string[], clashes: Clash[]): Group {
  const merged: Record<string, unknown> = {};
  for (const key of keysOf(mine, theirs)) {
    const value = mergeValue(base?.[key], mine[key], theirs[key], [...path, key], clashes);
    if (value !== undefined) merged[key] = value;
  }
  return merged;
}

function mergeValue(base: unknown, mine: unknown, theirs: unknown, path: readonly string[], clashes: Clash[]): unknown {
  if (same(mine, theirs) || same(base, theirs)) return mine;
  if (same(base, mine)) return theirs;
  const part = path.join(".");
  if (part === "garment" || part === "garment.saw") return mergeGroup(isGroup(base) ? base : null, mine as Group, theirs as Group, path, clashes);
  // One measures while another looks it over: each length, each flaw and each answer is a part of its own.
  if ((part === "sizes" || part === "state") && isGroup(mine) && isGroup(theirs)) return mergeGroup(isGroup(base) ? base : null, mine, theirs, path, clashes);
  if (part === "sizes.measures") return mergeMeasures(base, mine as readonly Measure[], theirs as readonly Measure[], path, clashes);
  if (lists.includes(part)) return mergeList(base, mine as readonly unknown[], theirs as readonly unknown[]);
  clashes.push({path, mine, theirs});
  return mine;
}

/** Parts that are lists of things, which come and go one by one. */
const lists: readonly string[] = ["tags", "photos", "state.flaws", "state.alterations", "state.missing", "state.fading"];

// Point by point; where both laid one anew, both whole lists are offered, each with all that only one side touched.
function mergeMeasures(base: unknown, mine: readonly Measure[], theirs: readonly Measure[], path: readonly string[], clashes: Clash[]): readonly Measure[] {
  const byPoint = (list: readonly Measure[]) => Object.fromEntries(list.map((one) => [one.point, one]));
  const inner: Clash[] = [];
  const merged = mergeGroup(Array.isArray(base) ? byPoint(base as Measure[]) : {}, byPoint(mine), byPoint(theirs), path, inner);
  const list = Object.values(merged) as Measure[];
  if (inner.length > 0) clashes.push({path, mine: list, theirs: Object.values(inner.reduce((group, clash) => put(group, clash.path.slice(path.length), clash.theirs), merged as Group))});
  return list;
}

// In a list things are added and taken away one by one: mine, less what they took away, and then what they added.
function mergeList(base: unknown, mine: readonly unknown[], theirs: readonly unknown[]): unknown[] {
  const before = Array.isArray(base) ? base : [];
  const has = (list: readonly unknown[], one: unknown) => list.some((other) => same(nameOf(one), nameOf(other)));
  const left = mine.filter((one) => has(theirs, one) || !has(before, one));
  // What they only reworded (the caption of a photo) is theirs where I left it alone.
  const newer = (one: unknown) => (before.some((other) => same(one, other)) ? (theirs.find((other) => same(nameOf(one), nameOf(other))) ?? one) : one);
  return [...left.map(newer), ...theirs.filter((one) => !has(mine, one) && !has(before, one))];
}

/** A photo is itself whatever its caption. */
const nameOf = (one: unknown) => (isGroup(one) && "photo" in one ? one.photo : one);

const isGroup = (value: unknown): value is Group => typeof value === "object" && value !== null && !Array.isArray(value);

const keysOf = (a: Group, b: Group) => [...new Set([...Object.keys(a), ...Object.keys(b)])];

function put(group: Group, [key, ...rest]: readonly string[], value: unknown): Group {
  const {[key!]: inner, ...others} = group;
  const now = rest.length === 0 ? value : put(isGroup(inner) ? inner : {}, rest, value);
  return now === undefined ? others : {...group, [key!]: now};
}
