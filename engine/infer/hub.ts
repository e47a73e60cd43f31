// The hub: label kind, rows and the codes repeated elsewhere hang together through hidden values and are weighed as one factor.
import {affine, mean, multiplyInto, times} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import type {Case} from "../rule/when.ts";
import type {CaseSpace} from "./cases.ts";
import {rowsId, type Evidence} from "./evidence.ts";
import type {Factor, Hub, HubTerm, Scope} from "./factor.ts";
import {kindsOf, monthsOf, rowsChance} from "./label-rows.ts";
import {labelPiece, productOf, type SeenPiece} from "./pieces.ts";
import {labelId} from "./ready-book.ts";
import {repeatMarginal, tiesAlone, tiesOf, type StrayChance, type TiedRepeat, type Ties} from "./repeats.ts";

const noneApart: CaseSpace["apart"] = {market: [], type: [], plant: [], lot: [], label: []};

/** Takes the hub apart into terms. Formula: docs/model.md, sections 5 and 6. */
function hubOf(evidence: Evidence, space: CaseSpace, in_: Case, pieces: readonly SeenPiece[], withLabel: boolean, scope: Scope): Hub {
  const book = evidence.view.own!;
  const n = book.n;
  const rule = labelPiece(evidence);
  const onLabel = productOf(pieces.filter(({piece}) => withLabel && piece.id === rule.id).flatMap(({marks}) => marks), in_, evidence.view);
  const label = withLabel ? strayRange(rule.id, rule.stray, scope) : {own: 1, stray: 0};
  const untied = tiesOf(book, [], {}, noneApart);
  const terms: HubTerm[] = [];
  const others = pieces.filter(({repeats, piece}) => repeats.length > 0 && piece.id !== rule.id);
  // A piece with one repeat and nothing else seen on it needs no term of its own: it adds to the repeat's strays.
  const [single, several] = [others.filter(alone), others.filter((piece) => !alone(piece))];
  const always: TiedRepeat[] = [
    ...pieces.filter(({piece}) => piece.id === rule.id).flatMap(({repeats}) => repeats.map((repeat) => ({repeat, piece: {own: 1, stray: 0}}))),
    ...single.map(({piece, repeats}) => ({repeat: repeats[0]!, piece: strayRange(piece.id, piece.stray, scope)})),
  ];
  const walk = (index: number, weight: Float64Array, tied: readonly TiedRepeat[]): void => {
    const piece = several[index];
    if (!piece) {
      const found = tiesOf(book, tied, in_, space.apart);
      const free = tiesAlone(found, n);
      terms.push({
        ties: found,
        own: affine(weight, label.own),
        stray: times(weight, free, label.stray),
      });
      return;
    }
    const marks = productOf(piece.marks, in_, evidence.view);
    const chance = strayRange(piece.piece.id, piece.piece.stray, scope);
    const belonging = piece.repeats.map((repeat) => ({repeat, piece: {own: 1, stray: 0}}));
    if (chance.own > 0) walk(index + 1, times(weight, marks, chance.own), [...tied, ...belonging]);
    if (chance.stray > 0) {
      const base = chance.stray * strayMean(piece, marks, evidence);
      walk(index + 1, affine(weight, base), tied);
    }
  };
  walk(0, constant(n, 1), always);
  return {terms, onLabel, withLabel, untied};
}

const alone = ({marks, repeats}: SeenPiece) => marks.length === 0 && repeats.length === 1;

/** Chance by month of label kind and rows, the codes tied or not. */
function labelledChance(evidence: Evidence, space: CaseSpace, in_: Case, ties: Ties, scope: Scope): Float64Array {
  const book = evidence.view.own!;
  const alone = evidence.rows.length === 0 ? tiesAlone(ties, book.n) : null;
  const result = constant(book.n, 0);
  for (const {kind, chance} of kindsOf(book.label!, evidence.label, in_, space.apart, evidence.rows.length, scope.misjudged)) {
    const months = monthsOf(chance);
    if (months.from === months.until) continue;
    const rows = alone ?? rowsChance(book, book.label!, kind, months, evidence.rows, in_, ties, evidence.trifle);
    for (let t = months.from; t < months.until; t++) result[t]! += chance[t]! * rows[t]!;
  }
  return result;
}

export function hubFactor(evidence: Evidence, space: CaseSpace, in_: Case, pieces: readonly SeenPiece[], withLabel: boolean, scope: Scope): Factor {
  const n = evidence.view.prior.length;
  const hub = hubOf(evidence, space, in_, pieces, withLabel, scope);
  const known = new Map<Ties, Float64Array>();
  const labelled = (ties: Ties): Float64Array => {
    let found = known.get(ties);
    if (!found) {
      found = withLabel ? labelledChance(evidence, space, in_, ties, scope) : tiesAlone(ties, n);
      multiplyInto(found, hub.onLabel);
      known.set(ties, found);
    }
    return found;
  };
  const vector = constant(n, 0);
  const base = withLabel && hub.terms.some(({stray}) => stray.some((s) => s > 0)) ? mean(labelled(hub.untied)) : 0;
  for (const {ties, own, stray} of hub.terms) {
    const tied = own.some((w) => w > 0) ? labelled(ties) : vector;
    for (let t = 0; t < n; t++) vector[t]! += own[t]! * tied[t]! + stray[t]! * base;
  }
  const ids = pieces.flatMap(({marks, repeats}) => [...marks, ...repeats].map(({mark}) => mark.id));
  if (withLabel && evidence.label) ids.push(labelId);
  if (withLabel && evidence.rows.length > 0) ids.push(rowsId);
  const names = pieces.map(({piece}) => piece.id);
  return {hub, ids, pieces: [...new Set(withLabel ? [labelPiece(evidence).id, ...names] : names)], vector, own: vector};
}

function strayRange(piece: string, stray: number, {fixed}: Scope): StrayChance {
  if (fixed?.piece !== piece) return {own: 1 - stray, stray};
  return fixed.stray ? {own: 0, stray} : {own: 1 - stray, stray: 0};
}

/** What a stray piece shows on average: its marks and repeats of some other garment's month. */
function strayMean(piece: SeenPiece, marks: Float64Array, evidence: Evidence): number {
  const book = evidence.view.own!;
  const product = marks.slice();
  for (const repeat of piece.repeats) if (book.codes[repeat.mark.mark.of]) multiplyInto(product, repeatMarginal(book, repeat));
  return mean(product);
}
