// The page of everything that can be wrong with an input, made from the wordings themselves.
import type {Problem} from "../../engine/index.ts";
import {cell, page, table} from "./markdown.ts";
import {problemFamilies} from "./problem-samples.ts";

/** Every problem with an example. */
export function problemsPage(): string {
  return page("Problems", "the wordings in `problems.ts` files", [
    "Whatever cannot be understood is refused, never dropped: leaving it out would change a date. A problem names its place, what was found, why that cannot stand, and how to mend it. All problems of a file come at once.",
    "The names below (such as `window/reversed`) are stable; the words in the table are examples.",
    ...problemFamilies.flatMap(({title, problems}) => [`## ${title}`, table(["name", "what was found", "why it cannot stand", "how to mend it"], problems.map(row))]),
  ]);
}

const row = ({code, what, why, fix}: Problem) => [`\`${code}\``, cell(what), cell(why), cell(fix)];
