// Numbers and codes whose form tells what they are: registered numbers, postal codes, patents, standards, stock numbers, addresses.
import {plainLetters} from "./find-phrase.ts";
import type {Hit} from "./suggestion.ts";

/** One form: what it looks like, and the marks that it shows. */
interface Form {
  readonly is: RegExp;
  readonly what: string;
  readonly marks: (match: RegExpExecArray) => readonly (readonly [mark: string, value: string])[];
}

/** Letters that a reader takes for figures, among figures. */
const figure = "[0-9OQISZB]";
const toFigures = (text: string) => text.replace(/[OQ]/g, "0").replace(/I/g, "1").replace(/S/g, "5").replace(/Z/g, "2").replace(/B/g, "8");
const plainNumber = (text: string) => String(Number(toFigures(text).replace(/\D/g, "")));

const registered = "us.numbers.registered-numbers";
const address = "us.post.address";
const patent = "us.patent";
/** Two-letter names of the states. Source: United States Postal Service, Publication 28, appendix B (from memory). */
const states = "AL|AK|AZ|AR|CA|CO|CT|DE|FL|GA|HI|ID|IL|IN|IA|KS|KY|LA|ME|MD|MA|MI|MN|MS|MO|MT|NE|NV|NH|NJ|NM|NY|NC|ND|OH|OK|OR|PA|RI|SC|SD|TN|TX|UT|VT|VA|WA|WV|WI|WY|DC";
const oldStates = "N\\.\\s?Y\\.?|N\\.\\s?J\\.?|CALIF|PENNA|MASS|ILL|CONN|TENN|TEX|WIS|MICH|MINN|WASH|FLA|ALA|MISS|ORE|COLO|KY|VA|MD|MO|GA";
const months = "JAN|FEB|MAR|APR|MAY|JUN|JUL|AUG|SEP|OCT|NOV|DEC";

const forms: readonly Form[] = [
  {is: new RegExp(`(?:^|[^A-Z])R\\.?\\s?N\\.?\\s?(?:NO\\.?|#)?\\s?-?(${figure}{5,6})(?![0-9A-Z])`), what: "a registered number of a firm", marks: ([, n]) => [[`${registered}.prefix`, "rn"], ...rnMark(Number(plainNumber(n!)))]},
  {is: new RegExp(`W\\.?\\s?P\\.?\\s?[L1I]\\.?\\s?(?:NO\\.?|#)?\\s?-?(${figure}{3,5})(?![0-9A-Z])`), what: "a wool products label number of a firm", marks: ([, n]) => [[`${registered}.prefix`, "wpl"], ...wplMark(Number(plainNumber(n!)))]},
  {is: /(?:^|[^A-Z])CA[ -]?(\d{5})(?!\d)/, what: "a Canadian dealer's number", marks: () => [["canada.textile.label.dealer-number", "present"]]},
  {is: new RegExp(`(?:^|[^A-Z])(?:${states})\\.?\\s+\\d{5}-\\d{4}(?!\\d)`), what: "a United States address with nine figures", marks: () => [[`${address}.form`, "zip-plus-four"], [`${address}.state`, "two-letter"]]},
  {is: new RegExp(`(?:^|[^A-Z])(?:${states})\\.?\\s+\\d{5}(?![\\d-])`), what: "a United States address with five figures", marks: () => [[`${address}.form`, "zip"], [`${address}.state`, "two-letter"]]},
  {is: new RegExp(`(?:^|[^A-Z])(?:${oldStates})\\.?,?\\s+\\d{5}(?!\\d)`), what: "a United States address with five figures", marks: () => [[`${address}.form`, "zip"], [`${address}.state`, "old-form"]]},
  {is: new RegExp(`[A-Z]{3,}\\s+\\d{1,2},?\\s+(?:${oldStates})\\.?\\s*$`), what: "a United States address with a postal zone", marks: () => [[`${address}.form`, "zone"], [`${address}.state`, "old-form"]]},
  {is: /(?:^|[^A-Z0-9])[ABCEGHJ-NPRSTVXY]\d[ABCEGHJ-NPRSTV-Z] ?\d[ABCEGHJ-NPRSTV-Z]\d(?![A-Z0-9])/, what: "a Canadian postal code", marks: () => [["canada.post.address.postal-code", "present"]]},
  {is: /(?:^|[^A-Z0-9])[A-Z]{1,2}\d[A-Z\d]? \d[ABD-HJLNP-UW-Z]{2}(?![A-Z0-9])/, what: "a British postcode", marks: () => [["uk.post.address.postcode", "present"]]},
  {is: /(?:^|\D)1?[ -]?\(?(8(?:00|88|77|66|55))\)?[ -.]\d{3}[ -.]\d{4}(?!\d)/, what: "a toll-free number", marks: ([, code]) => [["us.telephone.number.form", `toll-free-${code}`]]},
  {is: /WWW[. ]|[A-Z0-9]\.(?:COM|NET|ORG|CO\.UK|DE|FR|JP)(?![A-Z])/, what: "a web address", marks: () => [["web.label.address.web", "present"]]},
  {is: new RegExp(`PAT[A-Z]*\\.?\\s+(?:${months})[A-Z]*\\.?\\s*\\d{1,2}[,. -]+(1[89]\\d\\d)`), what: "a patent named by its day", marks: ([, year]) => [[`${patent}.notice.form`, "day"], [`${patent}.notice.year`, year!]]},
  {is: /DES(?:IGN)?\.?\s?PAT[A-Z]*\.?\s*(?:NO\.?\s*)?D?(\d{2,3}[,. ]?\d{3})(?!\d)/, what: "a design patent", marks: ([, n]) => [[`${patent}.number.design`, plainNumber(n!)]]},
  {is: /(?:^|[^.A-Z] ?|[^N]\. ?)PAT[A-Z]*\.?\s*(?:NOS?\.?\s*)?(\d{1,2}[,. ]?\d{3}[,. ]?\d{3})(?!\d)/, what: "a patent number", marks: ([, n]) => [[`${patent}.notice.form`, "number"], [`${patent}.number.utility`, plainNumber(n!)]]},
  {is: /(?:COPYRIGHT|COPR\.?)\s*(?:BY\s+)?((?:19|20)\d\d)(?!\d)/, what: "a copyright line", marks: ([, year]) => [["us.copyright.line.year", year!]]},
  {is: /(?:^|[^A-Z])R\.?D\.?\s?NO\.?\s?(\d{5,6})(?!\d)/, what: "a registered design", marks: ([, n]) => [["uk.design.numbers.number", plainNumber(n!)]]},
  {is: /(?:^|[^A-Z])(CS|PS)[ -]?(153-48|155-50|36-70|54-72|215-58|42-70)(?!\d)/, what: "a size standard", marks: ([, kind, n]) => [["us.size.standards.cited", `${kind!.toLowerCase()}-${n}`]]},
  {is: /(?:ANSI|ISEA)[ ./A-Z]*107-?(1999|2004|2010|2015|2020)/, what: "a standard for clothing that is seen from afar", marks: ([, year]) => [["us.protective.standards.high-visibility", `edition-${year}`]]},
  {is: /NFPA[ -]?2112/, what: "a standard for flame-resistant clothing", marks: () => [["us.protective.standards.nfpa-2112", "present"]]},
  {is: /(?:ASTM[ -]?)?F[ -]?1506/, what: "a standard for flame-resistant clothing", marks: () => [["us.protective.standards.astm-f1506", "present"]]},
  {is: /(?:^|[^A-Z])HRC[ -]?[1-4](?!\d)/, what: "an arc category", marks: () => [["us.protective.standards.hazard-category", "hrc"]]},
  {is: /(?:^|[^A-Z])EN[ -]?ISO[ -]?20471/, what: "a European standard", marks: () => [["eu.protective.standards.high-visibility", "en-iso-20471"]]},
  {is: /(?:^|[^A-Z])EN[ -]?471(?:[ :-]?(1994|2003))?(?!\d)/, what: "a European standard", marks: ([, year]) => [["eu.protective.standards.high-visibility", year ? `en-471-${year}` : "en-471"]]},
  {is: /(?:^|[^A-Z])EN[ -]?ISO[ -]?13688/, what: "a European standard", marks: () => [["eu.protective.standards.general", "en-iso-13688"]]},
  {is: /(?:^|[^A-Z])EN[ -]?340(?!\d)/, what: "a European standard", marks: () => [["eu.protective.standards.general", "en-340"]]},
  {is: /GB[ ./T]*18401(?:[ -]?(2003|2010))?/, what: "a Chinese standard", marks: ([, year]) => [["china.label.standards.safety-class", year ? `edition-${year}` : "no-year"]]},
  {is: /GB[ ./T]*5296[.]4(?:[ -]?(1998|2012))?/, what: "a Chinese standard", marks: ([, year]) => [["china.label.standards.instructions-standard", year === "2012" ? "edition-2012" : "edition-1998"]]},
  {is: /SUPER\s?\d{2,3}\s?'?S/, what: "a number for fine wool", marks: () => [["us.wool.content.super-numbers", "present"]]},
  {is: /MIL-(?:DTL|PRF)-/, what: "a military specification", marks: () => [["us.military.specification.form", "mil-detail"]]},
  {is: /MIL-[A-Z]-\d{3,6}/, what: "a military specification", marks: () => [["us.military.specification.form", "mil"]]},
  {is: /P\.?Q\.?D\.?\s?SPEC|Q\.?M\.?C\.?\s?SPEC|TENTATIVE\s?SPEC/, what: "a quartermaster's specification", marks: () => [["us.military.specification.form", "quartermaster"]]},
  {is: /(?:^|\D)84\d\d-?(00|01)-?\d{3}-?\d{4}(?!\d)/, what: "a stock number of thirteen figures", marks: ([, two]) => [["us.military.stock-number.form", `thirteen-figures-${two}`]]},
  {is: /(?:^|\D)84\d\d-\d{3}-\d{4}(?!\d)/, what: "a stock number of eleven figures", marks: () => [["us.military.stock-number.form", "eleven-figures"]]},
  {is: /STOCK\s?NO\.?\s?\d\d-[A-Z]-\d+/, what: "a stock number with a letter", marks: () => [["us.military.stock-number.form", "class-letter"]]},
];

/** Below the first number of the later series, a number is of the fur series; between the two it is neither. */
function rnMark(number: number): readonly (readonly [string, string])[] {
  if (number >= 13670) return [[`${registered}.rn-number`, String(number)]];
  return number >= 101 && number <= 4086 ? [[`${registered}.fur-rn-number`, String(number)]] : [];
}

const wplMark = (number: number): readonly (readonly [string, string])[] => (number >= 101 && number <= 13669 ? [[`${registered}.wpl-number`, String(number)]] : []);

/** Everything in some rows that is known by its form. The first form that shows a mark counts. */
export function formHits(rows: readonly string[]): Hit[] {
  const known = new Set<string>();
  return rows.flatMap((text, row) => forms.flatMap(({is, what, marks}) => {
    const match = is.exec(plainLetters(text));
    if (!match) return [];
    const words = match[0].replace(/^[^0-9A-Z]+/, "").trim();
    const hits = marks(match).filter(([mark]) => !known.has(mark)).map(([mark, value]): Hit => ({mark, value, words, row, likeness: 1, why: `“${words}” has the form of ${what}`}));
    for (const {mark} of hits) known.add(mark);
    return hits;
  }));
}
