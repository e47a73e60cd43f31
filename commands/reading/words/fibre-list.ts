// The fibre list: whether shares stand before the fibres, and in how many languages fibres are named.
import {bareRow, findAny, type Found} from "./find-phrase.ts";
import {sayRead, type Hit} from "./suggestion.ts";

const names: Readonly<Record<string, readonly string[]>> = {
  English: ["COTTON", "WOOL", "LINEN", "SILK", "POLYESTER", "NYLON", "RAYON", "SPANDEX", "ACRYLIC", "ACETATE", "VISCOSE", "ELASTANE"],
  French: ["COTON", "LAINE", "SOIE", "ELASTHANNE"],
  German: ["BAUMWOLLE", "WOLLE", "SEIDE", "ELASTHAN", "VISKOSE"],
  Spanish: ["ALGODON", "LANA", "POLIESTER"],
  Italian: ["COTONE", "POLIESTERE"],
  Dutch: ["KATOEN", "WOL"],
};

/** Names so near to each other that the better likeness tells the language. */
interface Named extends Found {
  readonly language: string;
  readonly name: string;
  readonly row: number;
}

/** What a fibre list suggests. */
export function fibreHits(rows: readonly string[]): Hit[] {
  const named = rows.flatMap((text, row) => {
    const bare = bareRow(text);
    const found = Object.entries(names).flatMap(([language, words]) => {
      const one = findAny(words, bare);
      return one ? [{...one, language, name: one.phrase, row}] : [];
    });
    return found.filter((one) => !found.some((other) => other !== one && other.from < one.until && other.until > one.from && better(other, one)));
  });
  const first = named[0];
  if (!first) return [];
  const languages = new Set(named.filter(({likeness}) => likeness > 0.9).map(({language}) => language));
  const share = named.find(({row, from}) => /(?:\d{1,2}|100|1OO|I00|IOO)\s?%?\s*(?:[A-Z]+\s+)?$/.test(bareRow(rows[row]!).text.slice(0, from)) || /^\s*\d{1,3}\s?%/.test(rows[row]!));
  const {row, read, name, likeness} = share ?? first;
  const words = rows[row]!.trim();
  const hits: Hit[] = [{mark: "us.fibre.content.statement", value: share ? "percentages" : "names-only", words, row, likeness, why: `${sayRead(read, name, likeness)}, ${share ? "a share before it" : "without a share"}`}];
  const wool = named.find((one) => one.name === "WOOL" && /\d/.test(rows[one.row]!.slice(0, one.from)));
  if (wool) hits.push({mark: "us.wool.content.percentage", value: "present", words: rows[wool.row]!.trim(), row: wool.row, likeness: wool.likeness, why: "a share of wool is named"});
  if (languages.size >= 3) hits.push({mark: "eu.fibre.names.many-languages", value: "present", words, row, likeness, why: `fibres are named in ${[...languages].join(", ")}`});
  else if (languages.has("English") && languages.has("French")) hits.push({mark: "canada.textile.label.bilingual", value: "present", words, row, likeness, why: "fibres are named in English and in French"});
  return hits;
}

const better = (a: Named, b: Named) => a.cost < b.cost || (a.cost === b.cost && a.until - a.from > b.until - b.from);
