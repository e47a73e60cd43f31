// The size on the tag against the tape: how much it changed, and whether the wash, wear or a needle did it.
import {sayOdds} from "../engine/index.ts";
import {dimensionalChange, sayChange} from "./change.ts";
import type {GarmentKind} from "./garment-kind.ts";
import {sayMm} from "./length.ts";
import type {Sizes, State} from "./model.ts";
import {measuredOf, type Measured} from "./point.ts";
import {ratioOf, times, toNumber, ratio} from "./ratio.ts";
import {clothOdds, recordedOdds, tagDimensions, type ClothLife, type TagDimension, type Work} from "./tag-table.ts";

export interface TagCause {
  /** kept, shrunk, stretched, or the work's id. */
  readonly id: string;
  /** "the wash", "a shortened hem" */
  readonly says: string;
  /** Whether a needle or another garment's tag is behind it, not the cloth. */
  readonly odd: boolean;
  readonly probability: number;
}

export interface TagCheck {
  readonly point: string;
  readonly name: string;
  /** In percent of what the tag says; less is negative. */
  readonly change: number;
  /** Likeliest first. */
  readonly causes: readonly TagCause[];
  readonly sentence: string;
  /** What a needle, or another garment's tag, did when it was not the cloth; whether it is likely is in the causes. */
  readonly oddly: string;
}

/** An odd mark in the way of the engine's, so that it can be shown beside them; it does not move the date. */
export interface OddSize {
  readonly id: string;
  readonly says: string;
  readonly probability: number;
}

/**
 * Every dimension that both the tag and the tape tell.
 * Exact: all combinations of what the cloth went through (the same for all dimensions) and what was done at each are weighed.
 * @param state  what was noted of alterations counts as seen
 */
export function tagChecks(kind: GarmentKind, sizes: Sizes, state: Pick<State, "alterations"> | null = null): TagCheck[] {
  const {tag} = sizes;
  if (!tag) return [];
  const pairs = tagDimensions.flatMap((dimension) => {
    const inches = tag[dimension.entry];
    // The neck opening of a sweatshirt is no collar.
    const of = kind === "sweatshirt" ? undefined : measuredOf(kind, sizes).find(({point}) => point.id === dimension.point);
    return inches === null || !of ? [] : [weighed(dimension, inches, of, new Set((state?.alterations ?? []).map((one) => one.kind)))];
  });
  const lives = (Object.keys(clothOdds) as ClothLife[]).map((life) => ({life, weight: pairs.reduce<number>((all, {fits}) => all * (sum(Object.values(fits[life]).map(({weight}) => weight)) || Number.MIN_VALUE), clothOdds[life])}));
  const whole = sum(lives.map(({weight}) => weight)) || 1;
  return pairs.map(({of, inches, change, fits}) => {
    const odds = new Map<string, TagCause>();
    for (const {life, weight} of lives) {
      const here = Object.values(fits[life]);
      const total = sum(here.map((one) => one.weight)) || 1;
      for (const {id, says, odd, weight: part} of here) odds.set(id, {id, says, odd, probability: (odds.get(id)?.probability ?? 0) + ((weight / whole) * part) / total});
    }
    const causes = [...odds.values()].sort((a, b) => b.probability - a.probability);
    return {point: of.point.id, name: of.point.name, change, causes, sentence: sentenceOf(of, inches, change, causes), oddly: oddlyOf(of, inches, change, causes)};
  });
}

/** What a needle probably did, to be shown with the odd marks. */
export function oddSizes(checks: readonly TagCheck[]): OddSize[] {
  return checks.flatMap(({causes, oddly, point}) => {
    const odd = causes.filter((cause) => cause.odd);
    const probability = sum(odd.map((cause) => cause.probability));
    return probability > 0.5 ? [{id: `sizes.${point}`, says: oddly, probability}] : [];
  });
}

type Fit = {readonly id: string; readonly says: string; readonly odd: boolean; readonly weight: number};

function weighed(dimension: TagDimension, inches: number, of: Measured, recorded: ReadonlySet<string>) {
  const tagMm = toNumber(times(ratioOf(inches), ratio(254n, 10n)));
  const change = dimensionalChange(tagMm, toNumber(of.whole.mm));
  // The hand's error is a bound, taken as two spreads; it doubles with the girth. Tags go by whole and half inches.
  const error = (100 * (of.errorMm * (of.point.flat ? 2 : 1))) / 2 / tagMm;
  const named = dimension.works.find(({id}) => recorded.has(id));
  const oddsOf = (work: Work) => (named ? (work === named ? recordedOdds : work.odds * (1 - recordedOdds)) : work.odds);
  const none = 1 - sum(dimension.works.map(oddsOf));
  const fits = Object.fromEntries(
    (Object.keys(clothOdds) as ClothLife[]).map((life) => {
      const [mean, own] = dimension.cloth[life];
      const spread = Math.hypot(own, error);
      const works = dimension.works.map((work): Fit => {
        // Another garment's tag says nothing of this cloth.
        const shift = work.id === "other-tag" ? 0 : mean;
        const density = (normal((change - shift - work.low) / spread) - normal((change - shift - work.high) / spread)) / (work.high - work.low);
        return {id: work.id, says: work.says, odd: true, weight: Math.max(0, density) * oddsOf(work)};
      });
      return [life, [{id: life, says: lifeWords[life], odd: false, weight: (none * Math.exp(-0.5 * ((change - mean) / spread) ** 2)) / (spread * Math.sqrt(2 * Math.PI))}, ...works]];
    }),
  ) as unknown as Readonly<Record<ClothLife, readonly Fit[]>>;
  return {of, inches, change, fits};
}

const lifeWords: Readonly<Record<ClothLife, string>> = {kept: "nothing: it measures as tagged", shrunk: "the wash", stretched: "wear: it gave way"};

function sentenceOf(of: Measured, inches: number, change: number, [best, ...others]: readonly TagCause[]): string {
  const kept = best!.id === "kept";
  const other = others.find(({probability}) => probability >= 0.1);
  return `${headOf(of, inches, change)}: ${kept ? "as tagged" : `probably ${saidOf(best!, of, inches)}`}${kept && best!.probability > 0.8 ? "" : ` (${sayOdds(best!.probability)})`}${other ? `; else ${other.says} (${sayOdds(other.probability)})` : ""}`;
}

const oddlyOf = (of: Measured, inches: number, change: number, causes: readonly TagCause[]) => `${saidOf(causes.find(({odd}) => odd)!, of, inches)}: ${headOf(of, inches, change)}`;

const headOf = ({point, whole}: Measured, inches: number, change: number) => `${point.name} ${sayMm(whole.mm, whole.unit)}${point.flat ? " all round" : ""}, tagged ${inches} in (${sayChange(change)})`;

const saidOf = ({says, odd, id}: TagCause, {whole}: Measured, inches: number) => (odd && id !== "other-tag" ? `${says}, by about ${sayMm(Math.abs(toNumber(whole.mm) - inches * 25.4), whole.unit)}` : says);

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** The normal distribution function. Source: Abramowitz and Stegun 7.1.26, error below 1.5e-7. */
export function normal(z: number): number {
  const t = 1 / (1 + (0.3275911 * Math.abs(z)) / Math.SQRT2);
  const tail = 0.5 * t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * Math.exp((-z * z) / 2);
  return z >= 0 ? 1 - tail : tail;
}
