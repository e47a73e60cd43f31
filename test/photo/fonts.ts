// The type faces of made-up labels, all free to use, by the kind of printing that they stand for.
import {fileURLToPath} from "node:url";
import {GlobalFonts} from "@napi-rs/canvas";

export type Printing = "grotesque" | "condensed" | "geometric" | "typewriter" | "mono" | "dot matrix" | "stencil" | "angular";

export interface Face {
  readonly name: string;
  readonly printing: Printing;
}

const files: readonly (readonly [file: string, printing: Printing])[] = [
  ["arimo-latin-400-normal", "grotesque"],
  ["arimo-latin-700-normal", "grotesque"],
  ["libre-franklin-latin-500-normal", "grotesque"],
  ["public-sans-latin-500-normal", "grotesque"],
  ["archivo-narrow-latin-500-normal", "condensed"],
  ["roboto-condensed-latin-400-normal", "condensed"],
  ["barlow-condensed-latin-500-normal", "condensed"],
  ["jost-latin-400-normal", "geometric"],
  ["courier-prime-latin-700-normal", "typewriter"],
  ["special-elite-latin-400-normal", "typewriter"],
  ["overpass-mono-latin-500-normal", "mono"],
  ["doto-latin-900-normal", "dot matrix"],
  ["vt323-latin-400-normal", "dot matrix"],
  ["dotgothic16-latin-400-normal", "dot matrix"],
  ["saira-stencil-one-latin-400-normal", "stencil"],
  ["quantico-latin-400-normal", "angular"],
];

/** Loaded once; the packages are there for trying alone. */
export const faces: readonly Face[] = files.map(([file, printing]) => {
  const folder = file.slice(0, file.indexOf("-latin"));
  const path = fileURLToPath(new URL(`../../node_modules/@fontsource/${folder}/files/${file}.woff2`, import.meta.url));
  if (!GlobalFonts.registerFromPath(path, file)) throw new Error(`no type face in ${path}`);
  return {name: file, printing};
});
