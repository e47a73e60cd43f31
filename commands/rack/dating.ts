// What is kept of a finding beside the garment: the answer, its bounds, and the books and editions that it rests on.
import {printMonth, verdictOf as monthsOf, type Book, type Finding, type MonthIndex} from "../../engine/index.ts";
import type {Dating} from "../../store/model.ts";
import {verdictOf} from "../verdict.ts";

/** Shares of years below this are left out at either end. */
const leastShare = 1e-5;

/** The dating of a garment from its whole finding. For a later one in an older look, years and months are those of the making. */
export function datingOf(finding: Finding, books: readonly Book[], at: string): Dating {
  const {kind, words, probability, sureness, sentence} = verdictOf(finding);
  const {noEarlier, noLater} = monthsOf(finding);
  const months = kind === "two dates" ? made(finding) : finding.posterior;
  const best = months.reduce((most, share, i) => (share > months[most]! ? i : most), 0);
  return {
    at,
    books: books.filter((book) => book.kind === "public" || finding.makers.some(({maker}) => maker === book.book)).map(({book, edition}) => ({book, edition})),
    kind,
    words,
    sentence,
    sureness,
    probability: six(probability),
    best: printMonth((finding.first + best) as MonthIndex),
    noEarlier: printMonth(noEarlier),
    noLater: printMonth(noLater),
    maker: finding.makers[0]?.maker ?? null,
    plant: plantOf(finding),
    odd: finding.odd.length,
    years: yearsOf(months, finding.first),
  };
}

// As likely as two dates are, the making counts; for the rest the single date.
function made({twoDates, posterior}: Finding): Float64Array {
  const {probability, made: later} = twoDates!;
  return posterior.map((share, i) => (1 - probability) * share + probability * later[i]!);
}

/** The plant that a row most likely names; null when none is likelier than not. */
function plantOf({rows}: Finding): string | null {
  for (const {readings} of rows) {
    const chances = new Map<string, number>();
    for (const {plant, probability} of readings) if (plant !== null) chances.set(plant, (chances.get(plant) ?? 0) + probability);
    for (const [plant, chance] of chances) if (chance > 0.5) return plant;
  }
  return null;
}

function yearsOf(months: Float64Array, first: MonthIndex): Dating["years"] {
  const firstYear = Number(printMonth(first).slice(0, 4));
  const skipped = Number(printMonth(first).slice(5)) - 1;
  const shares: number[] = [];
  months.forEach((share, i) => {
    const year = Math.floor((skipped + i) / 12);
    shares[year] = (shares[year] ?? 0) + share;
  });
  const from = shares.findIndex((share) => share >= leastShare);
  const until = shares.findLastIndex((share) => share >= leastShare);
  return {first: firstYear + from, shares: shares.slice(from, until + 1).map(six)};
}

const six = (share: number) => Math.min(1, Math.round(share * 1e6) / 1e6);
