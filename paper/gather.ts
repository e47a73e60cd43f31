// Gathers what a paper on a garment is made from: what the rack keeps of it, what the marks say by the books in use, and the owner's settings.
import {readSetting} from "../commands/rack/read-setting.ts";
import type {Rack} from "../commands/rack/rack.ts";
import {sayOdds, type Problem} from "../engine/index.ts";
import type {FindingJson} from "../commands/finding-shape.ts";
import {gradeOf} from "../state/grade.ts";
import type {GradeRule} from "../state/rule.ts";
import type {Dating, GarmentRecord} from "../store/model.ts";
import type {Material} from "./sheet/material.ts";
import {worthWords} from "./worth-words.ts";

export interface PaperWish {
  /** Day of the paper, 2026-11-25. */
  readonly on: string;
  /** Whether what it may be worth is told, too. */
  readonly worth?: boolean;
}

export type Gathered = {readonly material: Material; readonly problems?: undefined} | {readonly material?: undefined; readonly problems: readonly Problem[]};

/** @returns the problems of a garment whose marks cannot be read by the books in use */
export async function gather(record: GarmentRecord, rack: Rack, {on, worth = false}: PaperWish): Promise<Gathered> {
  const {content, id} = record;
  const examined = await rack.examine({garment: content.garment, trace: false});
  if (examined.problems) return {problems: examined.problems};
  const finding = examined.answer;
  const dating = await datingFor(content.dating, finding, content.garment, rack);
  if (dating.problems) return dating;
  const owner = (await readSetting(rack.store, "owner")).value;
  const rule = await gradeRuleOf(rack);
  const graded = content.state ? gradeOf(content.state, rule) : null;
  return {material: {id, content, finding, dating: dating.dating, books: rack.world.books, owner, rule, graded, on, worth: worth ? await worthWords(id, rack) : null}};
}

/** The date that is kept, as long as it is what the marks say by the books in use; one worked out anew else. */
async function datingFor(kept: Dating | null, {verdict, makers, odd}: FindingJson, garment: GarmentRecord["content"]["garment"], {date}: Pick<Rack, "date">) {
  const same = kept && kept.kind === verdict.kind && kept.words === verdict.words && sayOdds(kept.probability) === sayOdds(verdict.probability) && kept.maker === (makers[0]?.maker ?? null) && kept.odd === odd.length;
  if (same) return {dating: kept};
  return (await date([garment]))[0]!;
}

/** The owner's rule for grades. */
export const gradeRuleOf = async ({store}: Pick<Rack, "store">): Promise<GradeRule> => (await readSetting(store, "grade-rule")).value;
