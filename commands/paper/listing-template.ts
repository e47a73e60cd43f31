// How the owner wants listing text to read: which parts in which order, in which voice, and words of their own before and after.
import {z} from "zod";
import {nearest} from "../../engine/nearest.ts";

/** The parts of a listing, in the order in which they stand when nobody says otherwise. */
export const listingBlocks = ["heading", "date", "reasons", "odd marks", "measurements", "cloth", "state", "note", "price"] as const;
export type ListingBlock = (typeof listingBlocks)[number];

/** What a part holds, for those who put a template together. */
export const blockMeaning: Readonly<Record<ListingBlock, string>> = {
  "heading": "what it is, and its number",
  "date": "when it was made, and how sure that is",
  "reasons": "the marks that the date rests on",
  "odd marks": "what does not fit, and what that may mean",
  "measurements": "as measured, and what its own tag says",
  "cloth": "weight of the cloth",
  "state": "grade, flaws, what was changed or is missing",
  "note": "your own note on the garment; left out as long as you do not ask for it",
  "price": "what is asked",
};

/** Words in braces that stand for something of the garment. */
export const placeholders = ["number", "title", "type", "maker", "date", "odds", "size", "grade", "price", "shop"] as const;
export type Placeholder = (typeof placeholders)[number];

/** What is wrong with a text that has words in braces; null when nothing is. */
export function braceFault(text: string): string | null {
  for (const [, word] of text.matchAll(/\{([^{}]*)\}/g)) {
    if ((placeholders as readonly string[]).includes(word!)) continue;
    const near = nearest(word!.trim().toLowerCase(), placeholders);
    return `{${word}} stands for nothing; ${near ? `did you mean {${near}}?` : `there are ${placeholders.map((one) => `{${one}}`).join(", ")}`}`;
  }
  return /[{}]/.test(text.replace(/\{[^{}]*\}/g, "")) ? "a brace is open or closed without its partner" : null;
}

const own = z.string().max(2000).superRefine((text, context) => {
  const fault = braceFault(text);
  if (fault) context.addIssue({code: "custom", message: fault});
});

export const listingTemplateSchema = z.strictObject({
  intro: own.default("").describe("your words before the first part; {number}, {title}, {date} and others stand for the garment's own"),
  blocks: z
    .array(z.enum(listingBlocks))
    .max(listingBlocks.length)
    .superRefine((blocks, context) => {
      const twice = blocks.find((block, i) => blocks.indexOf(block) !== i);
      if (twice) context.addIssue({code: "custom", message: `“${twice}” stands there twice; once is enough`});
    })
    .default(listingBlocks.filter((block) => block !== "note"))
    .describe("the parts, in order; what is left out is not told, but odd marks, flaws and the word that a date is an estimate always are"),
  outro: own.default("").describe("your words after the last part"),
  voice: z.enum(["short", "spoken"]).default("spoken").describe("short: a line a fact; spoken: whole sentences"),
  units: z.enum(["both", "inches", "centimetres"]).default("both").describe("units of measurements"),
});

export type ListingTemplate = z.output<typeof listingTemplateSchema>;
