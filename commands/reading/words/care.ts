// Care words: how many of wash, bleach, dry and iron are spoken of, and in which languages.
import {bareRow, findAny} from "./find-phrase.ts";
import type {Hit} from "./suggestion.ts";

type Term = "wash" | "bleach" | "dry" | "iron";
type Language = "English" | "French" | "German" | "Spanish";

const care: readonly (readonly [Term, Language, readonly string[]])[] = [
  ["wash", "English", ["MACHINE WASH", "HAND WASH", "WASH WARM", "WASH COLD", "WASH SEPARATELY", "WASH IN WARM", "WASHABLE", "DRY CLEAN ONLY", "DRY CLEAN", "DO NOT WASH", "WASH"]],
  ["bleach", "English", ["DO NOT BLEACH", "NO BLEACH", "NON-CHLORINE BLEACH", "BLEACH"]],
  ["dry", "English", ["TUMBLE DRY", "LINE DRY", "HANG DRY", "DRIP DRY", "DRY FLAT", "DO NOT TUMBLE", "DRY LOW"]],
  ["iron", "English", ["WARM IRON", "COOL IRON", "HOT IRON", "DO NOT IRON", "IRON LOW", "IRON IF NEEDED", "IRON"]],
  ["wash", "French", ["LAVER", "LAVABLE", "LAVAGE", "NETTOYAGE A SEC"]], ["bleach", "French", ["JAVELLISANT", "EAU DE JAVEL", "JAVEL"]], ["dry", "French", ["SECHER", "SECHAGE"]], ["iron", "French", ["REPASSER", "REPASSAGE"]],
  ["wash", "German", ["WASCHEN", "WASCHBAR", "REINIGEN"]], ["bleach", "German", ["BLEICHEN", "CHLOREN"]], ["dry", "German", ["TROCKNEN"]], ["iron", "German", ["BUGELN", "BUEGELN"]],
  ["wash", "Spanish", ["LAVAR", "LAVADO", "LAVESE"]], ["bleach", "Spanish", ["BLANQUEADOR", "BLANQUEAR", "CLORO"]], ["dry", "Spanish", ["SECAR", "SEQUESE"]], ["iron", "Spanish", ["PLANCHAR", "PLANCHE"]],
];

export interface CareWords {
  readonly terms: ReadonlySet<Term>;
  readonly languages: ReadonlySet<Language>;
  /** Rows that speak of care. */
  readonly rows: ReadonlySet<number>;
  /** The first words found, and how well. */
  readonly first: {readonly row: number; readonly words: string; readonly likeness: number} | null;
}

/** Looks for care words in some rows. */
export function findCare(rows: readonly string[]): CareWords {
  const terms = new Set<Term>();
  const languages = new Set<Language>();
  const spoken = new Set<number>();
  let first: CareWords["first"] = null;
  rows.map(bareRow).forEach((row, i) => {
    for (const [term, language, phrases] of care) {
      const found = findAny(phrases, row);
      if (!found) continue;
      terms.add(term);
      languages.add(language);
      spoken.add(i);
      first ??= {row: i, words: row.text.trim(), likeness: found.likeness};
    }
  });
  return {terms, languages, rows: spoken, first};
}

/** What care words suggest. A reader of letters sees no symbols, so that words beside symbols stay possible. */
export function careHits({terms, languages, first}: CareWords): Hit[] {
  if (!first) return [];
  const {row, words, likeness} = first;
  const told = [...terms].join(", ");
  const hits: Hit[] = [
    terms.size >= 3
      ? {mark: "us.care.label.instructions", value: ["full-words", "words-and-symbols"], words, row, likeness, why: `the label speaks of ${told}; look whether symbols stand beside the words`}
      : {mark: "us.care.label.instructions", value: ["few-words", "words-and-symbols"], words, row, likeness, why: `of care the label says few words (${told}); look whether symbols stand beside them`},
  ];
  if (["English", "French", "Spanish"].every((one) => languages.has(one as Language)) && !languages.has("German"))
    hits.push({mark: "origin.line.wording.english-french-spanish", value: "present", words, row, likeness, why: "washing words are read in English, French and Spanish"});
  return hits;
}
