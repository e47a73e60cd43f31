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
  {verb: "price", summary: "say what a garment may bring, from sales of such things", load: async () => (await import("./worth/verbs.ts")).priceVerb},
  {verb: "offer", summary: "say what to pay for a garment at most, and what looking further is worth", load: async () => (await import("./worth/verbs.ts")).offerVerb},
  {verb: "lot", summary: "say what a rail or a bag may bring, garments that nobody looked at included", load: async () => (await import("./worth/verbs.ts")).lotVerb},
  {verb: "sold", summary: "mark a garment as sold; its sale counts in prices at once", load: async () => (await import("./worth/verbs.ts")).soldVerb},
  {verb: "sales", summary: "keep sales to learn prices from: list, add, import, export, remove", load: async () => (await import("./worth/sales.ts")).salesVerb},
  {verb: "shop", summary: "show the books of the shop: bought, laid out, sold, and what hangs too long", load: async () => (await import("./worth/verbs.ts")).shopVerb},
  {verb: "terms", summary: "show or set what the shop wants and pays: margin, fees, currency ...", load: async () => (await import("./worth/verbs.ts")).termsVerb},
  {verb: "serve", summary: "serve the screens of a rack, on this machine or to others", load: async () => (await import("./serve.ts")).serveVerb},
  {verb: "books", summary: "list, check, show, compare and chart rule books", load: async () => (await import("./books.ts")).booksVerb},
];
