// Gives the JSON Schemas of the files a person writes.
import {z} from "zod";
import {bookJsonSchema, garmentJsonSchema, subjectJsonSchema, type JsonSchema} from "../rulebooks/json-schema.ts";
import {command} from "./command.ts";
import {findingShape} from "./finding-shape.ts";

const schemas = {
  book: bookJsonSchema,
  subject: subjectJsonSchema,
  garment: garmentJsonSchema,
  finding: (): JsonSchema => ({title: "Finding", ...z.toJSONSchema(findingShape)}),
};

export const showSchema = command({
  name: "books.schema",
  summary: "print the JSON Schema of book, garment or finding, for editors and programs",
  input: z.strictObject({of: z.enum(["book", "subject", "garment", "finding"]).default("book").describe("which file the schema is for")}),
  run: ({of}) => ({answer: schemas[of]()}),
  json: (schema: JsonSchema) => schema,
});
