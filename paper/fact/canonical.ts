// JSON in its one canonical spelling, so that the same facts always give the same bytes: RFC 8785, JSON Canonicalization Scheme.

export type Json = null | boolean | number | string | readonly Json[] | {readonly [name: string]: Json};

/**
 * Names sorted by UTF-16 code units, no blanks, numbers and text as ECMAScript prints them.
 * @throws RangeError for a number that JSON has no spelling for
 * @source RFC 8785, sections 3.2.1 to 3.2.3
 * @example
 * canonical({b: [1e21, "é"], a: null}) // -> '{"a":null,"b":[1e+21,"é"]}'
 */
export function canonical(value: Json): string {
  if (typeof value === "number" && !Number.isFinite(value)) throw new RangeError(`JSON cannot spell ${value}`);
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${(value as readonly Json[]).map(canonical).join(",")}]`;
  const entries = Object.entries(value as {readonly [name: string]: Json}).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([name, inner]) => `${JSON.stringify(name)}:${canonical(inner)}`).join(",")}}`;
}

/** A value as plain JSON: entries that are undefined are left out. */
export const plainJson = (value: unknown): Json => JSON.parse(JSON.stringify(value)) as Json;
