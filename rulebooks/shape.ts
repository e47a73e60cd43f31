// Checks a value against a schema and says what does not fit in words for people who know garments.
import type {z} from "zod";
import type {Problem} from "../engine/problem.ts";
import {listed, valueAt, type Path, type Where} from "./place.ts";
import * as say from "./problems.ts";
import {knownKeys, meaningAt} from "./schema-walk.ts";

type Issue = z.core.$ZodIssue;

/**
 * Checks a value against a schema.
 * @returns the value with defaults filled in, or every problem found
 */
export function checkShape<T extends z.ZodType>(schema: T, value: unknown, where: Where): {fits: z.infer<T>; problems?: undefined} | {fits?: undefined; problems: Problem[]} {
  const result = schema.safeParse(value);
  if (result.success) return {fits: result.data};
  return {problems: result.error.issues.flatMap((issue) => simple(issue, value)).flatMap((issue) => problemsOf(issue, schema, value, where))};
}

// One issue in words; `unrecognized_keys` speaks of several entries at once.
function problemsOf(issue: Issue, schema: z.ZodType, whole: unknown, where: Where): Problem[] {
  const path = issue.path as Path;
  const value = valueAt(whole, path);
  const last = path.at(-1);
  if (issue.code === "unrecognized_keys") {
    const known = knownKeys(schema, whole, path);
    return issue.keys.map((key) => say.unknownKey(where([...path, key], "key"), key, known));
  }
  if (value === undefined && typeof last === "string" && issue.code !== "invalid_key") {
    return [say.missingKey(where(path.slice(0, -1), "key"), last, meaningAt(schema, whole, path), allowed(issue))];
  }
  const at = where(path);
  switch (issue.code) {
    case "invalid_type":
      return [say.wrongType(at, value, (issue.expected as string).split("|").map((kind) => kinds[kind] ?? kind), meaningAt(schema, whole, path))];
    case "invalid_value":
    case "invalid_union":
      return [say.notOneOf(at, value, allowed(issue))];
    case "invalid_key":
      return [say.badName(where(path, "key"), String(last), issue.issues[0]?.message ?? "letters and digits")];
    case "too_small":
      return [say.outOfRange(at, sized(value), limit(issue, issue.minimum, issue.inclusive ? "at least" : "above"))];
    case "too_big":
      return [say.outOfRange(at, sized(value), limit(issue, issue.maximum, issue.inclusive ? "at most" : "below"))];
    default:
      return [say.badForm(at, value, issue.message)];
  }
}

function allowed(issue: Issue): string[] {
  if (issue.code === "invalid_value") return issue.values.map(String);
  return issue.code === "invalid_union" ? ((issue as {options?: readonly unknown[]}).options ?? []).map(String) : [];
}

const kinds: Record<string, string> = {
  string: "text", number: "a number", int: "a whole number", boolean: "true or false", array: "a list", tuple: "a list", object: "a group of named entries", record: "a group of named entries",
};

function sized(value: unknown): string {
  if (typeof value === "number") return `${value} stands here`;
  if (typeof value === "string") return `a text of ${value.length} characters stands here`;
  const size = Array.isArray(value) ? value.length : Object.keys(value ?? {}).length;
  return `${size} ${size === 1 ? "entry stands" : "entries stand"} here`;
}

function limit(issue: Issue & {origin: string}, bound: number | bigint, words: string): string {
  const unit = issue.origin === "string" ? " characters" : issue.origin === "array" ? " entries" : "";
  return `${words} ${bound}${bound === 1 && unit !== "" ? unit.replace("entries", "entry").replace("characters", "character") : unit}`;
}

// Where several forms are allowed, speaks of the one that was probably meant.
function simple(issue: Issue, whole: unknown): Issue[] {
  if (issue.code !== "invalid_union" || issue.errors.length === 0) return [issue];
  const branches = issue.errors.map((branch) => branch.map((inner) => ({...inner, path: [...issue.path, ...inner.path]}) as Issue).flatMap((inner) => simple(inner, whole)));
  const depth = issue.path.length;
  const otherKind = (inner: Issue) => inner.code === "invalid_type" && inner.path.length === depth;
  const fitting = branches.filter((branch) => !branch.some(otherKind));
  if (fitting.length === 0) {
    const expected = [...new Set(branches.flat().filter(otherKind).flatMap((inner) => String((inner as {expected?: string}).expected).split("|")))];
    return [{code: "invalid_type", expected: expected.join("|"), path: issue.path, message: ""} as Issue];
  }
  if (fitting.every(([first, ...more]) => first?.code === "invalid_value" && first.path.length === depth && more.length === 0)) {
    const values = fitting.flat().flatMap((inner) => (inner.code === "invalid_value" ? inner.values : []));
    return [{code: "invalid_value", values, path: issue.path, message: ""} as Issue];
  }
  const strange = (branch: readonly Issue[]) => branch.filter((inner) => inner.code === "unrecognized_keys" || valueAt(whole, inner.path as Path) === undefined).length;
  const least = Math.min(...fitting.map(strange));
  const nearest = fitting.filter((branch) => strange(branch) === least);
  const best = nearest[0]!;
  const missing = [...new Set(nearest.flat().map(({path}) => path[depth]))].filter((step) => typeof step === "string");
  if (nearest.length > 1 && missing.length > 1 && nearest.every(([first, ...more]) => first?.path.length === depth + 1 && more.length === 0)) {
    return [{code: "custom", path: issue.path, message: `an entry with ${listed(missing)}`} as Issue];
  }
  return nearest.length > 1 && best.some(({code}) => code === "unrecognized_keys") ? best.filter(({code}) => code === "unrecognized_keys") : best;
}
