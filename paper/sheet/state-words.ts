// The state of a garment as it is told to a buyer: the grade with what decided it, then every flaw, change and missing part.
import {sayFlaw, thingName, type Graded} from "../../state/grade.ts";
import type {Flaw, State} from "../../state/model.ts";
import type {GradeRule} from "../../state/rule.ts";
import {capital, listed} from "./say.ts";
import type {Entry} from "./sheet.ts";

export function stateEntries(state: State | null, graded: Graded | null, rule: GradeRule): Entry[] {
  if (!state || !graded) return [];
  const {flaws, wear, fading, clean, alterations, missing} = state;
  const entries: Entry[] = [{name: "grade", text: gradeSentence(graded)}];
  if (flaws.length > 0) entries.push(...flaws.map((flaw, i) => ({name: i === 0 ? (flaws.length === 1 ? "flaw" : "flaws") : "", text: sayWholeFlaw(flaw, rule)})));
  else entries.push({name: "flaws", text: "none noted"});
  if (wear !== null) entries.push({name: "wear", text: wear});
  if (fading.length > 0) entries.push({name: "wear pattern", text: listed(fading.map((kind) => thingName(rule.fading, kind)))});
  if (clean !== null) entries.push({name: "cleanliness", text: clean});
  entries.push(...alterations.map(({kind, place, note}, i) => ({name: i === 0 ? "changed" : "", text: withNote(`${thingName(rule.alterations, kind)}${place === "" ? "" : ` at the ${place}`}`, note)})));
  if (missing.length > 0) entries.push({name: "missing", text: listed(missing.map((kind) => thingName(rule.missing, kind)))});
  if (graded.untold.length > 0) entries.push({name: "not told", text: listed(graded.untold)});
  return entries;
}

/** "slight hole at the left knee, 12 mm (darned by hand)" */
export const sayWholeFlaw = (flaw: Flaw, rule: GradeRule): string => withNote(`${sayFlaw(flaw, rule)}${flaw.size === null ? "" : `, ${flaw.size} mm`}`, flaw.note);

const withNote = (words: string, note: string) => (note.trim() === "" ? words : `${words} (${note.trim()})`);

/** What decided stands beside the grade; the points of the rule are the shop's own business. "Good, for the hole at the left knee" */
const gradeSentence = ({grade, decided}: Graded): string => `${capital(grade)}${decided.length === 0 ? "" : `, for ${listed(decided.map(({says}) => says))}`}`;

export const gradeWord = (graded: Graded | null): string => (graded ? capital(graded.grade) : "");
