// The verbs of the command. Each is loaded when it is called, so that help comes at once.
import type {Command} from "commander";

export interface Verb {
  readonly verb: string;
  readonly summary: string;
  readonly load: () => Promise<() => Command>;
}

export const verbs: readonly Verb[] = [
  {verb: "examine", summary: "say when a garment was made, how sure that is, and why", load: async () => (await import("./examine.ts")).examineVerb},
  {verb: "ask", summary: "be asked for the marks of a garment, the most telling look first", load: async () => (await import("./ask.ts")).askVerb},
  {verb: "read", summary: "read the rows of labels from photos, with their doubt, and date them", load: async () => (await import("./read.ts")).readVerb},
  {verb: "batch", summary: "date thousands of garments from a table or a list", load: async () => (await import("./batch.ts")).batchVerb},
  {verb: "rack", summary: "keep garments: list, add, show, undo, import, back up, archive", load: async () => (await import("./rack.ts")).rackVerb},
  {verb: "sizes", summary: "say what a garment measures, and whether that hangs together and with its tag", load: async () => (await import("./state/sizes.ts")).sizesVerb},
  {verb: "grade", summary: "grade the state of garments by the shop's written rule", load: async () => (await import("./state/grade.ts")).gradeVerb},
  {verb: "fit", summary: "say whether garments would fit a body", load: async () => (await import("./state/fit.ts")).fitVerb},
  {verb: "paper", summary: "print dating sheets, hang tags, listings and wall charts; check a printed sheet", load: async () => (await import("./paper.ts")).paperVerb},
  {verb: "serve", summary: "serve the screens of a rack, on this machine or to others", load: async () => (await import("./serve.ts")).serveVerb},
  {verb: "books", summary: "list, check, show, compare and chart rule books", load: async () => (await import("./books.ts")).booksVerb},
];
