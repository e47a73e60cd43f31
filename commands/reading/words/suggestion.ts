// What the words on a label suggest: a mark with its value, where it was read and why; never set by itself.
import {z} from "zod";

const words = z.string();

export const suggestionSchema = z.strictObject({
  mark: words.describe("id of the mark"),
  value: z.union([words, z.array(words)]).describe("as a garment file would say it; several when the words leave them open"),
  words: words.describe("as they were read"),
  row: z.number().int().min(0).describe("which of the rows, from 0"),
  book: words.describe("id of the book that knows the mark"),
  likeness: z.number().min(0).max(1).describe("1: letter by letter"),
  why: words.describe("why this is suggested, in a sentence"),
});

/** One mark that the words on a label may show. */
export type Suggestion = z.infer<typeof suggestionSchema>;

/** A mark as found, before it is known which book holds it. */
export type Hit = Omit<Suggestion, "book">;

/** Says how words were read and what they are. */
export function sayRead(read: string, words: string, likeness: number): string {
  const shown = read.replace(/\s+/g, " ").trim();
  const said = `“${shown}” is read on the label`;
  return likeness >= 0.999 ? said : `${said}, most likely “${words}”`;
}
