// JSON Schemas of books and garments, so that editors help while typing; made from the same shapes that check them.
import {z} from "zod";
import {garmentSchema} from "../engine/rule/garment.ts";
import * as shapes from "../engine/rule/schema.ts";
import {subjectSchema} from "./subject.ts";

/** A JSON Schema, draft 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** A rule book in one file, or the head of one that is a folder. */
export const bookJsonSchema = (): JsonSchema => described("Rule book", shapes.bookSchema);

/** One subject file of a rule book that is a folder. */
export const subjectJsonSchema = (): JsonSchema => described("Subject of a rule book", subjectSchema);

/** A garment and what was seen on it. */
export const garmentJsonSchema = (): JsonSchema => described("Garment", garmentSchema);

// Shapes that occur often get a name, so that a schema says each of them once.
const often = {window: shapes.windowSchema, cite: shapes.citeSchema, when: shapes.whenSchema, part: shapes.partSchema, value: shapes.valueSchema, source: shapes.sourceSchema};
const names = new Map<unknown, string>(Object.entries(often).map(([name, schema]) => [schema, name]));

// "input": as written in the file, before defaults and turning numbers into text.
function described(title: string, schema: z.ZodType): JsonSchema {
  const metadata = z.registry<z.core.GlobalMeta>();
  metadata.get = (one) => ({...z.globalRegistry.get(one), ...(names.has(one) ? {id: names.get(one)!} : {})}) as ReturnType<typeof metadata.get>;
  const {$schema, ...rest} = z.toJSONSchema(schema, {io: "input", metadata});
  return {$schema, title, ...rest};
}
