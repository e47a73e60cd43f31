// Writes rulebooks/schema/*.json from the shapes in code: node scripts/run.mjs scripts/make-schema.ts
import {writeFileSync} from "node:fs";
import {bookJsonSchema, garmentJsonSchema, subjectJsonSchema} from "../rulebooks/json-schema.ts";

for (const [name, schema] of Object.entries({book: bookJsonSchema(), garment: garmentJsonSchema(), subject: subjectJsonSchema()})) {
  writeFileSync(new URL(`../rulebooks/schema/${name}.schema.json`, import.meta.url), `${JSON.stringify(schema, null, 2)}\n`);
}
