// The times a garment may be from, as a dealer would tell them apart, each with its price.
import type {Branch} from "../answer.ts";
import {highestToPay} from "../offer/offer.ts";
import type {Terms} from "../model.ts";
import {sayYears} from "../say.ts";
import type {Check} from "./kind-model.ts";
import type {Branching} from "./predict.ts";
import {rangeOf} from "./range.ts";

/** Years that hold less than this part of the likeliest year's chance tear a stretch in two. */
const valley = 0.08;
const longest = 10;
const mostBranches = 4;
const leastShare = 0.03;

/** Likeliest first; what is left over is "another time". */
export function branchesOf(bells: readonly Branching[], check: Check, terms: Terms, needed: number): Branch[] {
  const stretches = stretchesOf(bells);
  const named = stretches.filter(({share}) => share >= leastShare).slice(0, mostBranches);
  const rest = bells.filter((bell) => !named.some(({from, until}) => isWithin(bell, from, until)));
  const branches = named.map(({from, until}) => branch(sayYears(from, until), bells.filter((bell) => isWithin(bell, from, until)), check, terms, needed));
  return rest.length === 0 || sumOf(rest) < 0.005 ? branches : [...branches, branch(named.length === 0 ? "any time" : "another time", rest, check, terms, needed)];
}

const isWithin = ({possible: {years}}: Branching, from: number, until: number) => years[0] >= from && years[1] <= until;
const sumOf = (bells: readonly Branching[]) => bells.reduce((sum, {share}) => sum + share, 0);

function branch(words: string, bells: readonly Branching[], check: Check, terms: Terms, needed: number): Branch {
  const share = sumOf(bells);
  const like = bells.reduce((sum, bell) => sum + bell.share * bell.like, 0) / share;
  const price = like < needed ? null : rangeOf(bells, check);
  const years = bells.flatMap(({possible}) => possible.years);
  return {words, from: Math.min(...years), until: Math.max(...years), share: Math.min(1, share), price, like, most: price ? highestToPay(price.typical, terms.margin, terms) : null};
}

/** Stretches of neighbouring years, torn at valleys and at decades when they get long; likeliest first. */
function stretchesOf(bells: readonly Branching[]): {from: number; until: number; share: number}[] {
  const years = new Map<number, {until: number; share: number}>();
  for (const {possible, share} of bells) years.set(possible.years[0], {until: possible.years[1], share: share + (years.get(possible.years[0])?.share ?? 0)});
  const peak = Math.max(...[...years.values()].map(({share}) => share));
  const found: {from: number; until: number; share: number}[] = [];
  for (const [from, {until, share}] of [...years].sort((a, b) => a[0] - b[0])) {
    if (share < valley * peak) continue;
    const last = found.at(-1);
    const joins = last && from - last.until <= 1 && (until - last.from < longest || Math.floor(from / 10) === Math.floor(last.from / 10));
    if (joins) Object.assign(last, {until, share: last.share + share});
    else found.push({from, until, share});
  }
  return found.sort((a, b) => b.share - a.share || a.from - b.from);
}
