// The typefaces of papers, as files of their packages: each face is a row of files, of which the first that has a letter prints it.
import {readFileSync} from "node:fs";
import {createRequire} from "node:module";
import {create, type Font} from "fontkit";
import {unpackWoff} from "./woff.ts";

export const faces = ["serif", "serif bold", "sans", "sans bold"] as const;
export type Face = (typeof faces)[number];

/** One file of a face. */
export interface Cut {
  /** Its name inside a document. */
  readonly id: string;
  readonly bytes: Buffer;
  readonly font: Font;
}

const serifParts = ["latin", "latin-ext", "greek", "cyrillic", "cyrillic-ext", "vietnamese"];
const files = (family: string, parts: readonly string[], weight: number) => parts.map((part) => `${family}/files/${family}-${part}-${weight}-normal`);

// Instrument Sans has Latin letters alone: Greek, Cyrillic and arrows come from the serif.
const rows: Readonly<Record<Face, readonly string[]>> = {
  "serif": files("source-serif-4", serifParts, 400),
  "serif bold": files("source-serif-4", serifParts, 600),
  "sans": [...files("instrument-sans", ["latin", "latin-ext"], 400), ...files("source-serif-4", serifParts, 400)],
  "sans bold": [...files("instrument-sans", ["latin", "latin-ext"], 600), ...files("source-serif-4", serifParts, 600)],
};

const packages = createRequire(import.meta.url);
const opened = new Map<string, Cut>();

/** A file of a face, read once. */
function cutOf(id: string): Cut {
  let cut = opened.get(id);
  if (!cut) {
    const bytes = unpackWoff(readFileSync(packages.resolve(`@fontsource/${id}.woff`)));
    opened.set(id, (cut = {id, bytes, font: create(bytes) as Font}));
  }
  return cut;
}

/** The file that prints a letter; undefined when none of the face has it. */
export function cutFor(face: Face, letter: number): Cut | undefined {
  for (const id of rows[face]) {
    const cut = cutOf(id);
    if (cut.font.hasGlyphForCodePoint(letter)) return cut;
  }
  return undefined;
}

/** The small web form of a face's Latin letters, for papers as web pages. */
export const webFace = (face: Face): Buffer => readFileSync(packages.resolve(`@fontsource/${rows[face][0]!}.woff2`));
