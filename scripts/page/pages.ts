// Every generated page by its file name below docs/reference.
import {showSchema} from "../../commands/show-schema.ts";
import type {World} from "../../commands/world.ts";
import {bookJsonSchema, garmentJsonSchema, shippedBooks, subjectJsonSchema} from "../../rulebooks/index.ts";
import type {JsonSchema} from "../../rulebooks/json-schema.ts";
import {commandPage} from "./command-page.ts";
import {problemsPage} from "./problems-page.ts";
import {rulesPage} from "./rules-page.ts";
import {schemaPage} from "./schema-page.ts";

/** All pages: file name to text. */
export async function pages(): Promise<Record<string, string>> {
  const {books} = shippedBooks();
  if (!books) throw new Error("the books that are shipped do not load");
  const finding = showSchema.run({of: "finding"}, {} as World).answer as JsonSchema;
  return {
    "README.md": index,
    "book.md": schemaPage("Entries of a rule book", bookJsonSchema(), "the shapes in `engine/rule/schema.ts`", "How to write a book, with examples: [books](../guide/books.md). The same as JSON Schema for editors: `ticking books schema book`."),
    "subject.md": schemaPage("Entries of a subject file", subjectJsonSchema(), "the shapes in `rulebooks/subject.ts`", "A book may be a folder: `book.yaml` is its head, every other file holds one subject. What each entry holds inside stands in [entries of a rule book](book.md).", "book.md"),
    "garment.md": schemaPage("Entries of a garment", garmentJsonSchema(), "the shape in `engine/rule/garment.ts`", "How to write a garment down: [examine](../guide/examine.md). Under `saw` stands any mark of the books at hand."),
    "finding.md": schemaPage("A finding as JSON", finding, "the shape in `commands/finding-shape.ts`", "What `ticking examine --json` prints. What the numbers mean: [numbers](../guide/numbers.md)."),
    "problems.md": problemsPage(),
    "public-rules.md": rulesPage(books.find(({kind}) => kind === "public")!),
    "command.md": await commandPage(),
  };
}

const index = `# Reference

Generated from source with \`npm run docs\`; never edited by hand.

- [The command](command.md): every verb, flag and exit code
- [Entries of a garment](garment.md), [of a rule book](book.md), [of a subject file](subject.md)
- [A finding as JSON](finding.md)
- [Public rules](public-rules.md): what the public book says, since when, on whose authority
- [Problems](problems.md): everything that can be wrong with an input, and how to mend it
`;
