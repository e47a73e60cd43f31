// The origin line: “Made in” and a country, or a country that stands in a row of its own.
import type {Book} from "../../../engine/index.ts";
import {bareRow, findAny, findPhrase, type BareRow} from "./find-phrase.ts";
import {sayRead, type Hit} from "./suggestion.ts";

const mark = "origin.line.country.line";
const before = ["MADE IN", "MADE IN THE", "PRODUCT OF", "PRODUIT DE", "FABRIQUE EN", "FABRIQUE AU", "FABRIQUE AUX", "HECHO EN", "SEWN IN", "FABRICADO EN", "PRODUCED IN", "HERGESTELLT IN", "ASSEMBLED IN"];

/** Names of values that say more than the country's name, or less than a label prints. */
const printed: Readonly<Record<string, readonly string[]>> = {
  usa: ["U.S.A.", "THE U.S.A.", "UNITED STATES OF AMERICA", "UNITED STATES", "ETATS UNIS", "EE.UU."],
  ryukyu: ["RYUKYU ISLANDS", "RYUKYUS", "OKINAWA"],
  "germany-zone": ["GERMANY U.S. ZONE", "U.S. ZONE GERMANY", "GERMANY BRITISH ZONE", "BRITISH ZONE GERMANY"],
  "west-germany": ["WEST GERMANY", "W. GERMANY", "WESTERN GERMANY", "WEST-GERMANY"],
  gdr: ["G.D.R.", "DDR", "GERMAN DEMOCRATIC REPUBLIC"],
  ussr: ["U.S.S.R.", "USSR"],
  "post-soviet": ["RUSSIA", "UKRAINE", "BELARUS", "ESTONIA", "LATVIA", "LITHUANIA"],
  turkiye: ["TURKIYE"],
  "macau-portuguese": [],
  "northern-marianas": ["NORTHERN MARIANA ISLANDS", "SAIPAN"],
  none: [],
};

/** What the value of the origin line may look like in print, by its id. */
export function countryNames(book: Book): ReadonlyMap<string, readonly string[]> {
  const rule = book.marks[mark];
  if (rule?.kind !== "choice") return new Map();
  return new Map(Object.entries(rule.values).map(([id, {name}]) => [id, printed[id] ?? name.split(/,\s| or /).filter((part) => !/[()]/.test(part))]));
}

/** Looks for the origin line in some rows. */
export function findCountry(rows: readonly string[], book: Book): Hit[] {
  const names = countryNames(book);
  const bare = rows.map(bareRow);
  return bare.flatMap((row, i) => {
    const said = findAny(before, row);
    if (said) {
      const rest = row.text.slice(said.until);
      const here = /[A-Z]/.test(rest) ? best(names, bareRow(rest), true, rest.length) : null;
      const next = !here && !/[A-Z]{2}/.test(rest) && bare[i + 1] ? best(names, bare[i + 1]!, true, Infinity) : null;
      const found = here ?? next;
      return found ? [hit(found, `${said.read.trim()} ${found.read.trim()}`, i, `made in ${found.name}`)] : [];
    }
    const alone = best(names, row, false, row.text.length);
    return alone ? [hit(alone, alone.read, i, alone.name)] : [];
  });
}

interface Country {
  readonly id: string;
  readonly name: string;
  readonly read: string;
  readonly likeness: number;
}

const hit = ({id, likeness}: Country, words: string, row: number, name: string): Hit => ({mark, value: id, words, row, likeness, why: sayRead(words, name, likeness)});

/** @param led  true: behind “made in”, so that it begins there; false: the country has to be all of the row */
function best(names: ReadonlyMap<string, readonly string[]>, row: BareRow, led: boolean, length: number): Country | null {
  let found: (Country & {worth: number}) | null = null;
  for (const [id, phrases] of names) {
    for (const phrase of phrases) {
      const at = findPhrase(phrase, row);
      if (!at || (led ? at.from > 4 && at.from > length / 3 : at.until - at.from < row.text.trim().length - 1)) continue;
      const worth = at.until - at.from - 4 * at.cost - at.from / 10;
      if (!found || worth > found.worth) found = {id, name: phrase, read: at.read, likeness: at.likeness, worth};
    }
  }
  return found;
}
