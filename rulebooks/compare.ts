// Compares two editions of a book: what came, what went, which numbers changed, each in a sentence that can be read aloud.
import type {Book} from "../engine/rule/schema.ts";
import {clip, printPath, type Path} from "./place.ts";

/** One difference between two editions. `before` and `after` are printed values; an added thing has no `before`, a removed one no `after`. */
export interface Change {
  readonly kind: "added" | "removed" | "changed";
  readonly path: Path;
  /** "window of green-satin ends 1977-01..1978-06 → 1978-01..1979-06" */
  readonly says: string;
  readonly before?: string;
  readonly after?: string;
}

/** What the named entries of a section are called, one of them. */
const kinds: ReadonlyMap<unknown, string> = new Map(Object.entries({
  sources: "source", places: "place", pieces: "piece", marks: "mark", schemes: "scheme", groups: "group", markets: "market",
  kinds: "label kind", values: "value", codes: "code", reads: "specimen", knots: "number issued in",
}));
const codeLists: ReadonlyMap<unknown, string> = new Map(Object.entries({plants: "plant", lots: "lot", fabrics: "fabric"}));
/** Entries that hold sentences: that they changed is worth a line, the sentences are not. */
const wordings: ReadonlySet<unknown> = new Set(["note", "says", "look", "caution", "seen"]);

/**
 * Every difference between two editions, in the order of the older one, new things after old ones.
 * A thing that came or went is one change, however much it holds.
 * @example
 * compareBooks(second, third).map(({says}) => says)
 * // -> ["edition 2 → 3", "window of green-satin ends 1977-01..1978-06 → 1978-01..1979-06"]
 */
export function compareBooks(before: Book, after: Book): Change[] {
  return compare(before, after, []);
}

/**
 * Prints changes, one a line: "+" came, "-" went, "~" changed; the path stands behind in brackets.
 * @returns a single line saying so when nothing changed
 */
export function printChanges(changes: readonly Change[]): string[] {
  const signs = {added: "+", removed: "-", changed: "~"} as const;
  return changes.length === 0 ? ["no difference"] : changes.map(({kind, says, path}) => `${signs[kind]} ${says} (${printPath(path)})`);
}

function compare(before: unknown, after: unknown, path: Path): Change[] {
  if (Object.is(before, after)) return [];
  if (isGroup(before) && isGroup(after)) {
    const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
    return keys.flatMap((key) => compare(own(before, key), own(after, key), [...path, key]));
  }
  if (Array.isArray(before) && Array.isArray(after)) {
    if (path.at(-1) === "knots") return compare(byMonth(before), byMonth(after), path);
    if (before.length === after.length && [...before, ...after].every(isGroup)) return before.flatMap((one, i) => compare(one, after[i], [...path, i]));
  }
  const [was, is] = [print(before), print(after)];
  return was === is ? [] : [change(before, after, path)];
}

function change(before: unknown, after: unknown, path: Path): Change {
  const kind = isNothing(before) ? "added" : isNothing(after) ? "removed" : "changed";
  const last = path.at(-1)!;
  const pair = last === "begins" || last === "ends";
  const open = pair || last === "until" ? "open" : "nothing";
  const [was, is] = [before, after].map((value) => (isNothing(value) ? open : print(value))) as [string, string];
  const printed = {...(kind === "added" ? {} : {before: was}), ...(kind === "removed" ? {} : {after: is})};
  const thing = path.length > 1 && kinds.has(path.at(-2));
  const subject = thing ? said(path) : pair ? `${said(path.slice(0, -1))} ${last}` : said(path);
  if (thing && kind !== "changed") {
    const here = kind === "added" ? after : before;
    const name = !isGroup(here) ? `: ${print(here)}` : typeof here.name === "string" ? `: ${here.name}` : "";
    return {kind, path, says: `${subject} ${kind}${clip(name, 200)}`, ...printed};
  }
  if (wordings.has(last)) return {kind, path, says: `${subject} ${kind === "changed" ? "reworded" : kind}`, ...printed};
  return {kind, path, says: `${subject} ${clip(was, 200)} → ${clip(is, 200)}`, ...printed};
}

/** ["labels", "kinds", "green-satin", "window"] is "window of green-satin"; what a thing is stands before its name when nothing else does. */
function said(path: Path): string {
  const names: string[] = [];
  for (let i = 0; i < path.length; i++) {
    const [step, next] = [path[i]!, path[i + 1]];
    const list = codeLists.get(step);
    if (list && next === "codes" && path.length > i + 2) names.push(`${list} ${path[(i += 2)]}`);
    else if (kinds.has(step) && next !== undefined) names.push(i + 2 === path.length ? `${kinds.get(step)} ${path[++i]}` : String(path[++i]));
    else if (step !== "labels" || next !== "kinds") names.push(typeof step === "number" ? `no. ${step + 1}` : step);
  }
  return names.toReversed().join(" of ");
}

// Lists are compared entry by entry where entries can be matched: knots by month, others by position while none came or went.
const byMonth = (knots: readonly {month: string}[]) => Object.fromEntries(knots.map(({month, ...knot}) => [month, knot]));

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const own = (group: Record<string, unknown>, key: string) => (Object.hasOwn(group, key) ? group[key] : undefined);

const isNothing = (value: unknown) => value === undefined || value === null;

const isMonths = (value: unknown): value is string[] => Array.isArray(value) && value.length === 2 && value.every((one) => /^\d{4}-\d\d$/.test(String(one)));

function print(value: unknown): string {
  if (isNothing(value)) return "open";
  if (typeof value === "string") return value.trim() === value && value !== "" ? value : `"${value}"`;
  if (isMonths(value)) return value.join("..");
  if (Array.isArray(value)) return `[${value.map(print).join(", ")}]`;
  if (isGroup(value)) return `{${Object.entries(value).map(([key, inner]) => `${key}: ${print(inner)}`).join(", ")}}`;
  return String(value);
}
