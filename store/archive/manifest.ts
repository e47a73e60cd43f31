// What an archive holds: a list of its files with their sizes and hashes, itself the first file.
import {z} from "zod";

export const form = "ticking rack";
/** Raised when older programs could not restore what a newer one wrote. */
export const formVersion = 2;

export const manifestName = "ticking.json";
/** Lines of JSON, one thing a line. */
export const dataNames = ["garments.jsonl", "history.jsonl", "sales.jsonl", "photos.jsonl", "books.jsonl", "settings.jsonl"] as const;
export type DataName = (typeof dataNames)[number];

/** The files of lines that an archive of some form must hold: sales came with the second. */
export const dataNamesOf = (version: number): readonly DataName[] => dataNames.filter((name) => version > 1 || name !== "sales.jsonl");

export const photoName = (hash: string) => `photos/${hash}`;
export const bookName = (book: string, edition: number) => `books/${encodeURIComponent(book)}-${edition}.yaml`;

/** Every name that a file of an archive can have: none of them leads out of a folder. */
export const namePattern = /^(?:ticking\.json|(?:garments|history|sales|photos|books|settings)\.jsonl|photos\/[0-9a-f]{64}|books\/[\w.!~*'()%-]{1,300}-\d{1,9}\.yaml)$/;

const fileSchema = z.strictObject({name: z.string().regex(namePattern), bytes: z.number().int().min(0), sha256: z.string().regex(/^[0-9a-f]{64}$/)});

export const manifestSchema = z.strictObject({
  form: z.literal(form),
  version: z.literal([1, formVersion]),
  garments: z.number().int().min(0),
  steps: z.number().int().min(0),
  sales: z.number().int().min(0).default(0).describe("written down; those of garments are told by the garments"),
  photos: z.number().int().min(0),
  books: z.number().int().min(0),
  files: z.array(fileSchema),
});

export type ArchivedFile = z.infer<typeof fileSchema>;
export type Manifest = z.infer<typeof manifestSchema>;

/** Settings that stay on the machine: an archive may be handed on. */
export const isSecret = (key: string) => /^(?:passphrase|secret)\b/.test(key);
