// The committed JSON Schemas are those that the shapes in code make.
import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {bookJsonSchema, garmentJsonSchema, subjectJsonSchema} from "../../rulebooks/json-schema.ts";

test.each([
  ["book", bookJsonSchema()],
  ["garment", garmentJsonSchema()],
  ["subject", subjectJsonSchema()],
])("rulebooks/schema/%s.schema.json is up to date: run scripts/make-schema.ts when it is not", (name, schema) => {
  const committed = readFileSync(new URL(`../../rulebooks/schema/${name}.schema.json`, import.meta.url), "utf8");
  expect(committed).toBe(`${JSON.stringify(schema, null, 2)}\n`);
});

// JSON Schema 2020-12, core section 8.2.3: every reference points at a definition of the same document.
test("every reference in the schemas points at a definition", () => {
  for (const schema of [bookJsonSchema(), garmentJsonSchema(), subjectJsonSchema()]) {
    const names = [...JSON.stringify(schema).matchAll(/"\$ref":"#\/\$defs\/([^"]+)"/g)].map(([, name]) => name!);
    expect(Object.keys(schema.$defs ?? {})).toEqual(expect.arrayContaining(names));
  }
});
