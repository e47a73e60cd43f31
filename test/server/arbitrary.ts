// Makes values from the shapes of the interface's own document: mostly fitting, with a slip here and there.
import * as fc from "fast-check";

type Schema = Readonly<Record<string, unknown>>;

/** Values that belong nowhere in particular. */
const strange: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, "", "-", "=1+1", "__proto__", "../../etc/passwd", "\0", "\ud800", 0, -1, 1e308, 2 ** 53, [], {}, [[]], true, "3 (8/3) 21", "(", "?".repeat(200)),
  fc.jsonValue({maxDepth: 2}),
);

/** @param definitions  named shapes that references lead to */
export function arbitraryOf(schema: Schema, definitions: Readonly<Record<string, Schema>>, depth = 0): fc.Arbitrary<unknown> {
  const fitting = fittingOf(schema, definitions, depth);
  return fc.oneof({weight: 30, arbitrary: fitting}, {weight: 1, arbitrary: strange});
}

function fittingOf(schema: Schema, definitions: Readonly<Record<string, Schema>>, depth: number): fc.Arbitrary<unknown> {
  const inner = (one: unknown) => arbitraryOf(one as Schema, definitions, depth + 1);
  if (typeof schema.$ref === "string") return inner(definitions[schema.$ref.split("/").at(-1)!]);
  if ("const" in schema) return fc.constant(schema.const);
  if (Array.isArray(schema.enum)) return fc.constantFrom(...(schema.enum as unknown[]));
  const choices = (schema.anyOf ?? schema.oneOf) as readonly Schema[] | undefined;
  if (choices) return fc.oneof(...choices.map(inner));
  switch (schema.type) {
    case "null": return fc.constant(null);
    case "boolean": return fc.boolean();
    case "integer": return fc.integer({min: clamp(schema.minimum, 0), max: clamp(schema.maximum, 1000)});
    case "number": return fc.double({min: Number(schema.minimum ?? -10), max: Number(schema.maximum ?? 1000), noNaN: true});
    case "array": return fc.array(inner(schema.items ?? {}), {minLength: Number(schema.minItems ?? 0), maxLength: Math.min(Number(schema.maxItems ?? 3), Math.max(3, Number(schema.minItems ?? 0)))});
    case "object": return objectOf(schema, definitions, depth);
    case "string": return textOf(schema);
    default: return strange;
  }
}

const clamp = (bound: unknown, usual: number) => (typeof bound === "number" && Math.abs(bound) < 2 ** 31 ? bound : usual);

function objectOf(schema: Schema, definitions: Readonly<Record<string, Schema>>, depth: number): fc.Arbitrary<unknown> {
  const properties = (schema.properties ?? {}) as Readonly<Record<string, Schema>>;
  const known = fc.record(Object.fromEntries(Object.entries(properties).map(([key, one]) => [key, arbitraryOf(one, definitions, depth + 1)])), {requiredKeys: (schema.required ?? []) as string[]});
  const more = schema.additionalProperties;
  if (typeof more !== "object" || more === null || depth > 6) return known;
  const names = fc.oneof(fc.constantFrom("label", "button-stamp", "hem-tape", "rows", "3", "8", "__proto__"), fc.string({minLength: 1, maxLength: 12}));
  const others = fc.dictionary(names, arbitraryOf(more as Schema, definitions, depth + 1), {maxKeys: 3});
  return fc.tuple(known, others).map(([a, b]) => ({...b, ...(a as object)}));
}

function textOf(schema: Schema): fc.Arbitrary<unknown> {
  if (typeof schema.pattern === "string" && schema.format === undefined) return fc.stringMatching(new RegExp(schema.pattern));
  if (schema.format === "date-time") return fc.date({min: new Date(0), max: new Date(4e12), noInvalidDate: true}).map((date) => date.toISOString());
  const words = fc.constantFrom("wickerlow", "grey-tape", "blue-satin", "3 8 21", "3 (8/3) 21", "21", "present", "none", "1968", "trousers");
  const limits = {minLength: Number(schema.minLength ?? 0), maxLength: Math.min(Number(schema.maxLength ?? 30), 30)};
  return fc.oneof(words, fc.string(limits), fc.string({...limits, unit: "binary"}));
}
