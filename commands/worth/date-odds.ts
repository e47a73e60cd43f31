// What a price needs to know of a garment's date: the odds of its years and makers, its lot, and what the next looks could show.
import {printMonth, type Finding, type Garment, type MonthIndex, type Problem} from "../../engine/index.ts";
import type {Look, YearOdds} from "../../worth/index.ts";
import type {World} from "../world.ts";

export interface DateOdds {
  /** Of the making, a later reproduction counted with its chance. */
  readonly years: YearOdds;
  readonly makers: readonly {readonly maker: string | null; readonly probability: number}[];
  /** The lot that the rows most likely name; null when none is likelier than not. */
  readonly lot: string | null;
  readonly looks: readonly Look[];
}

export type WeighedDate = {readonly odds: DateOdds; readonly problems?: undefined} | {readonly odds?: undefined; readonly problems: readonly Problem[]};

/** So many looks are weighed in money: the first of the ranking. */
const mostLooks = 8;
/** Years with less than this at either end are left out. */
const leastShare = 1e-6;
/** Makers less likely than this are left out. */
const leastMaker = 1e-3;

/** Looks are worked out only when asked for: they take longer than all the rest. */
export function dateOdds(garment: Garment, {examiner}: Pick<World, "examiner">, withLooks: boolean): WeighedDate {
  const {finding: ahead, problems} = examiner().lookAhead(garment, withLooks ? mostLooks : 0);
  if (problems) return {problems};
  const {finding, looks} = ahead;
  const {first, makers, rows} = finding;
  return {
    odds: {
      years: yearsOf(withLater(finding.posterior, finding), first),
      makers: makers.filter(({probability}) => probability >= leastMaker).map(({maker, probability}) => ({maker, probability})),
      lot: lotOf(rows),
      looks: looks.map(({look: {id, name, effort, opensSeam}, outcomes}) => ({
        mark: id, name, effort, opensSeam,
        outcomes: outcomes.map(({probability, months}) => ({probability, years: yearsOf(withLater(months, finding), first)})),
      })),
    },
  };
}

/** A later thing in an older look was made later: its years count with the chance that it is one, whatever a look shows. */
function withLater(months: Float64Array, {twoDates}: Finding): Float64Array {
  if (!twoDates) return months;
  const {probability, made} = twoDates;
  return months.map((share, i) => (1 - probability) * share + probability * made[i]!);
}

function yearsOf(months: Float64Array, first: MonthIndex): YearOdds {
  const [year, month] = printMonth(first).split("-").map(Number) as [number, number];
  const shares: number[] = [];
  months.forEach((share, i) => {
    const at = Math.floor((month - 1 + i) / 12);
    shares[at] = (shares[at] ?? 0) + share;
  });
  const from = shares.findIndex((share) => share >= leastShare);
  const until = shares.findLastIndex((share) => share >= leastShare);
  return from < 0 ? {first: year, shares} : {first: year + from, shares: shares.slice(from, until + 1)};
}

function lotOf(rows: Finding["rows"]): string | null {
  for (const {readings} of rows) {
    const chances = new Map<string, number>();
    for (const {lot, probability} of readings) if (lot !== null) chances.set(lot, (chances.get(lot) ?? 0) + probability);
    for (const [lot, chance] of chances) if (chance > 0.5) return lot;
  }
  return null;
}
