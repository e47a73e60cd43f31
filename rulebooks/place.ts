// Where something stands in a file: paths, lines and short prints of values, for the heads of problems.

/** The keys and list positions (from 0) that lead to a value. */
export type Path = readonly (string | number)[];

/** Says where a path stands, "file:line:column path"; the nearest thing above it when there is nothing at the path itself. */
export type Where = (path: Path, part?: "key" | "value") => string;

/**
 * Prints a path: keys joined by dots, list positions counted from 1.
 * @example
 * printPath(["schemes", "figures", "parts", 1, "month"]) // -> "schemes.figures.parts #2.month"
 */
export function printPath(path: Path): string {
  return path.map((step, i) => (typeof step === "number" ? ` #${step + 1}` : `${i === 0 ? "" : "."}${clip(step, 60)}`)).join("");
}

/**
 * A short print of any value: text in quotes, lists and entries by their size, nothing that could upset a terminal.
 * @example
 * show("a") // -> '"a"'
 */
export function show(value: unknown): string {
  if (typeof value === "string") return `"${clip(value, 60)}"`;
  if (value === null || value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 1 ? "a list of one" : `a list of ${value.length}`;
  if (typeof value === "object") return "a group of named entries";
  return String(value);
}

/** Cuts a text to a length in characters and spells control characters out. */
export function clip(text: string, length: number): string {
  const short = text.length > length ? `${text.slice(0, length)}…` : text;
  return short.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => `\\u${sign.codePointAt(0)!.toString(16).padStart(4, "0")}`);
}

/** The value at a path; undefined when there is none. */
export function valueAt(value: unknown, path: Path): unknown {
  let here = value;
  for (const step of path) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<string | number, unknown>)[step];
  }
  return here;
}

/** A list in words: "a, b or c". */
export function listed(names: readonly string[], joint = "or"): string {
  return names.length < 2 ? (names[0] ?? "nothing") : `${names.slice(0, -1).join(", ")} ${joint} ${names.at(-1)}`;
}
