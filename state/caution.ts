// Which cautions belong to a garment where it is sold: chosen from the table by what is known of it.
import {cautionTable, type CautionLine, type Source} from "./caution-table.ts";
import type {State} from "./model.ts";

export interface Caution {
  readonly id: string;
  readonly says: string;
  readonly source: Source | null;
}

/** All that the choice looks at; the content of a garment has it. */
export interface CautionSubject {
  readonly garment: {readonly type?: string; readonly title?: string; readonly note?: string};
  readonly tags?: readonly string[];
  /** Months, like 1968-03. */
  readonly dating?: {readonly noEarlier: string; readonly noLater: string} | null;
  readonly state?: Pick<State, "flaws" | "clean" | "alterations" | "missing"> | null;
}

/** Member states; source: the Union's own list, from memory. */
const union = new Set("AT BE BG HR CY CZ DK EE FI FR DE GR HU IE IT LV LT LU MT NL PL PT RO SK SI ES SE".split(" "));

const childWords = /\b(?:child|children|children's|kid|kids|boy|boys|boy's|girl|girls|girl's|baby|babies|infant|infants|toddler|toddlers|youth|juvenile)\b/;
const nightWords = /\b(?:nightwear|sleepwear|pyjama|pyjamas|pajama|pajamas|nightshirt|nightgown|nightdress|bathrobe|robe|dressing gown)\b/;

/**
 * The cautions for a garment, general ones first.
 * @param country  where the owner sells, ISO 3166-1; "" when that is not said: then what holds anywhere is shown
 */
export function cautionsFor(subject: CautionSubject, country = ""): Caution[] {
  const facts = factsOf(subject);
  const held = cautionTable.filter((line) => holds(line, facts));
  const here = (line: CautionLine) => line.countries?.some((one) => one === country || (one === "EU" && union.has(country))) ?? false;
  const own = new Set(held.filter(here).map(({topic}) => topic));
  return held.filter((line) => here(line) || (line.countries === null && !own.has(line.topic))).map(({id, says, source}) => ({id, says, source}));
}

interface Facts {
  readonly words: string;
  readonly made: {readonly from: number; readonly until: number} | null;
  readonly state: NonNullable<CautionSubject["state"]> | null;
}

function factsOf({garment: {type, title, note}, tags = [], dating, state}: CautionSubject): Facts {
  const year = (month: string) => Number(month.slice(0, 4));
  return {words: [type, title, note, ...tags].join(" ").toLowerCase().replaceAll("’", "'"), made: dating ? {from: year(dating.noEarlier), until: year(dating.noLater)} : null, state: state ?? null};
}

function holds({when: {child, nightwear, label, clean, flaw, words, from, until}}: CautionLine, facts: Facts): boolean {
  // A year that is not known holds for a caution that other signs call for, and not for one by years alone.
  const years = facts.made ? facts.made.from <= (until ?? Number.POSITIVE_INFINITY) && facts.made.until >= (from ?? 0) : (from === undefined && until === undefined) || Boolean(words ?? nightwear ?? child);
  return (
    years &&
    (!child || childWords.test(facts.words)) &&
    (!nightwear || nightWords.test(facts.words)) &&
    (!label || Boolean(facts.state?.missing.some((one) => /label/.test(one)) || facts.state?.alterations.some(({kind}) => /label/.test(kind)))) &&
    (!clean || facts.state?.clean === clean) &&
    (!flaw || Boolean(facts.state?.flaws.some(({kind}) => kind === flaw))) &&
    (!words || words.some((word) => new RegExp(`\\b${word}\\b`).test(facts.words)))
  );
}
