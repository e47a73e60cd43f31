// Writes the garment of a talk to a file that the owner can go on with.
import {existsSync, writeFileSync} from "node:fs";
import {basename, extname} from "node:path";
import {stringify} from "yaml";
import type {Garment} from "../../engine/index.ts";
import {NeedsMending} from "../ending.ts";
import {notWritten} from "../problems.ts";
import type {Prompter} from "./lines.ts";

/** The garment as YAML; what could not be seen goes into the note, so that nobody looks for it twice. */
export function garmentYaml(garment: Garment, cannotSee: readonly string[]): string {
  return stringify({...garment, ...(cannotSee.length > 0 ? {note: `Could not be seen: ${cannotSee.join(", ")}.`} : {})}, {lineWidth: 0});
}

/** Asks for a file name and writes the garment there; an empty answer saves nothing. */
export async function offerToSave(garment: Garment, cannotSee: readonly string[], prompter: Prompter, say: (text: string) => void): Promise<void> {
  const typed = (await prompter.ask("  Save the garment as [file name, like 0471.yaml / enter: do not save]: "))?.trim() ?? "";
  if (typed === "") return;
  const path = extname(typed) === "" ? `${typed}.yaml` : typed;
  if (existsSync(path)) {
    const over = await prompter.ask(`  There is a file ${path} already. Write over it? [y / enter: no]: `);
    if (!/^(y|yes)$/i.test(over?.trim() ?? "")) return offerToSave(garment, cannotSee, prompter, say);
  }
  try {
    writeFileSync(path, garmentYaml({...garment, garment: basename(path, extname(path))}, cannotSee));
  } catch (error) {
    throw new NeedsMending([notWritten(path, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  }
  say(`Saved. Look at it again with: ticking examine ${path}`);
}
