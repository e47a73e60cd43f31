// Composes a dating sheet: what is kept of a garment and what the marks say, in the words that get printed.
import {parseMonth} from "../../engine/index.ts";
import {notice} from "../../commands/finding-json.ts";
import {cautionsFor} from "../../state/caution.ts";
import type {FindingJson} from "../../commands/finding-shape.ts";
import {factsOf, type SheetTerms} from "../fact/facts.ts";
import {fingerprintOf, shortOf} from "../fact/fingerprint.ts";
import {printCode} from "../fact/sheet-code.ts";
import {evidenceOf, threadsOf, titleOf} from "./evidence.ts";
import type {Material} from "./material.ts";
import {clothEntry, measureEntries} from "./measure-words.ts";
import {capital, listed, makerName, sayDay} from "./say.ts";
import type {Sheet, SheetMonths} from "./sheet.ts";
import {stateEntries} from "./state-words.ts";
import {oddWords, spans, verdictWords} from "./verdict-words.ts";

/** The terms under which a sheet is made, from what it was made from. */
export const termsOf = ({on, graded, worth, content}: Material, photos: number): SheetTerms => ({on, photos: Math.min(photos, content.photos.length), grade: graded?.grade ?? null, worth});

/** @param photos  how many are shown, the first ones */
export function composeSheet(material: Material, photos: number): Sheet {
  const {id, content, finding, dating, books, owner, rule, graded, on, worth} = material;
  const {garment, sizes, state} = content;
  const terms = termsOf(material, photos);
  const fingerprint = fingerprintOf(factsOf(content, dating, terms));
  const verdict = verdictWords(finding, dating, books);
  const makers = [garment.maker ?? []].flat().map((maker) => makerName(books, maker));
  const about = [garment.type ?? "", makers.length > 0 ? `maker: ${listed(makers, "or")}` : "", garment.market ? `sold in: ${garment.market.length < 4 ? garment.market.toUpperCase() : garment.market}` : ""].filter((words) => words !== "").join(" · ");
  return {
    number: `${garment.garment}-${fingerprint.slice(0, 6)}`,
    day: on,
    on: sayDay(on),
    owner: [owner.name, ...owner.address].filter((line) => line.trim() !== ""),
    garment: {number: garment.garment, title: garment.title ?? "", about: capital(about)},
    verdict,
    ribbon: {months: monthsOf(finding), threads: threadsOf(finding, books), label: `Ribbon of months: ${verdict.lead.toLowerCase()} ${verdict.words}, ${verdict.odds}`},
    odd: oddWords(finding),
    evidence: evidenceOf(finding, books),
    measures: [...measureEntries(garment.type, sizes), ...clothEntry(sizes)],
    state: stateEntries(state, graded, rule),
    photos: content.photos.slice(0, terms.photos).map(({photo, place, caption}) => ({photo, caption: [place, caption].filter((words) => words !== "").join(": ")})),
    worth,
    cautions: cautionWords(content, dating, owner.country),
    estimate: notice,
    books: `Dated by ${listed([...dating.books].map(({book, edition}) => `${titleOf(books, book)}, edition ${edition}`))}.`,
    code: {
      text: printCode({id, number: garment.garment, terms, fingerprint}),
      short: shortOf(fingerprint),
      how: "The code holds the fingerprint of what this sheet says of the garment. Read it with ticking, beside the rack it came from or a file taken out of it, to see whether both still say the same.",
    },
  };
}

/** What the estimate's own words do not say already. */
export const cautionWords = (content: Material["content"], dating: Material["dating"], country: string): string[] =>
  cautionsFor({...content, dating}, country).filter(({id}) => id !== "estimate" && id !== "authenticity").map(({says, source}) => (source ? `${says} (${source.title}.)` : says));

/** One ribbon, or two where there are two dates: those show the months that hold nine in ten, evenly. */
function monthsOf({months, twoDates, verdict}: FindingJson): SheetMonths[] {
  if (verdict.kind !== "two dates" || !twoDates) return [{name: "", first: months.first, shares: months.probabilities}];
  return [evenly("made, 9 in 10", months, twoDates.made), evenly("look, 9 in 10", months, twoDates.look)];
}

function evenly(name: string, {first, probabilities}: FindingJson["months"], runs: readonly {readonly from: string; readonly until: string}[]): SheetMonths {
  const start = parseMonth(first)!;
  const held = spans(runs);
  const count = held.reduce((sum, {from, until}) => sum + until - from + 1, 0);
  return {name, first, shares: probabilities.map((_, i) => (held.some(({from, until}) => start + i >= from && start + i <= until) ? 1 / count : 0))};
}
