// Reads a query string by its shape: numbers, truth values and nothing are texts there.
import {z} from "zod";

/** Entries that do not fit stay texts, so that the check of the shape says what is wrong. */
export function readQuery(query: URLSearchParams, shape: Readonly<Record<string, z.ZodType>>): Record<string, unknown> {
  const entries = [...new Set(query.keys())].map((key) => {
    const schema = Object.hasOwn(shape, key) ? shape[key] : undefined;
    return [key, schema ? valueOf(query.getAll(key), schema) : query.get(key)] as const;
  });
  return Object.fromEntries(entries);
}

function valueOf([text = "", ...others]: readonly string[], schema: z.ZodType): unknown {
  const {kind, nullable} = kindOf(schema);
  if (kind === "array") return [text, ...others].map((one) => valueOf([one], (schema as z.ZodArray).element as z.ZodType));
  if (nullable && text === "") return null;
  if (kind === "number" && /^-?\d{1,15}(\.\d{1,15})?$/.test(text)) return Number(text);
  if (kind === "boolean" && (text === "true" || text === "false")) return text === "true";
  return text;
}

function kindOf(schema: z.ZodType): {kind: string; nullable: boolean} {
  if (schema instanceof z.ZodNullable) return {kind: kindOf(schema.unwrap() as z.ZodType).kind, nullable: true};
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodOptional) return kindOf(schema.unwrap() as z.ZodType);
  return {kind: schema.def.type, nullable: false};
}
