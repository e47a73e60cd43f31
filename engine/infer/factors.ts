// The factors of one case: the label with all that hangs on it, the other pieces, the marks that stand alone.
import {mean, multiplyInto} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import type {CodeName} from "../row/parse.ts";
import type {Repeat} from "../row/tie.ts";
import type {Case} from "../rule/when.ts";
import {labelMatters, type CaseSpace} from "./cases.ts";
import {rowsId, type Evidence} from "./evidence.ts";
import {kindsOf, readyRepeats, repeatMarginal, rowsChance, tiesAlone, tiesOf, type Ties} from "./hub.ts";
import {labelPiece, mixStray, productOf, sortPieces, type SeenPiece} from "./pieces.ts";
import {labelId} from "./ready-book.ts";

/** A vector over months that multiplies the others, and the marks that it is made of. */
export interface Factor {
  /** Whether this is the label with all that hangs on it. */
  readonly hub: boolean;
  readonly ids: readonly string[];
  readonly pieces: readonly string[];
  readonly vector: Float64Array;
}

/** Which marks take part, and, to ask what a stray piece would mean, a piece fixed as stray or not. */
export interface Scope {
  keep(id: string): boolean;
  readonly fixed?: {readonly piece: string; readonly stray: boolean};
}

export const everything: Scope = {keep: () => true};

/**
 * The factors of a case, the hub (label, rows, repeats) first when there is one.
 * @param again  a hub made before in the same case, when the scope leaves all its marks as they were
 */
export function factorsOf(evidence: Evidence, space: CaseSpace, in_: Case, scope: Scope, again?: Factor): Factor[] {
  const n = evidence.view.prior.length;
  const pieces = sortPieces(evidence, scope.keep);
  const kept = {...evidence, label: scope.keep(labelId) ? evidence.label : null, rows: scope.keep(rowsId) ? evidence.rows : []};
  const label = labelPiece(evidence);
  const withLabel = evidence.view.own?.label ? labelMatters(kept, space.apart) : false;
  const withCodes = space.apart.plant.length > 0 || space.apart.lot.length > 0;
  const inHub = (piece: SeenPiece) => piece.repeats.length > 0 || (withLabel && piece.piece.id === label.id);
  const hub = pieces.filter(inHub);
  const factors: Factor[] = [];
  if (evidence.view.own && (withLabel || withCodes || hub.length > 0)) factors.push(again ?? hubFactor(kept, space, in_, hub, withLabel, scope));
  for (const piece of pieces) {
    if (inHub(piece)) continue;
    const product = productOf(piece.marks, in_, n);
    factors.push({hub: false, ids: piece.marks.map(({mark}) => mark.id), pieces: [piece.piece.id], vector: mixFixed(product, piece, scope)});
  }
  return factors;
}

function mixFixed(product: Float64Array, {piece}: SeenPiece, {fixed}: Scope): Float64Array {
  if (fixed?.piece !== piece.id) return mixStray(product, piece.stray);
  return fixed.stray ? constant(product.length, piece.stray * mean(product)) : product.map((p) => (1 - piece.stray) * p);
}

/** The hub's vector: a sum over which of its pieces are stray. Formula: docs/model.md, sections 5 and 6. */
function hubFactor(evidence: Evidence, space: CaseSpace, in_: Case, pieces: readonly SeenPiece[], withLabel: boolean, scope: Scope): Factor {
  const book = evidence.view.own!;
  const n = book.n;
  const rule = labelPiece(evidence);
  const onLabel = productOf(pieces.filter(({piece}) => withLabel && piece.id === rule.id).flatMap(({marks}) => marks), in_, n);
  const repeaters = pieces.filter(({repeats, piece}) => repeats.length > 0 && piece.id !== rule.id);
  const steady = pieces.filter(({piece}) => piece.id === rule.id).flatMap(({repeats}) => repeats);

  const known = new Map<Ties, Float64Array>();
  const labelled = (ties: Ties): Float64Array => {
    let found = known.get(ties);
    if (!found) {
      found = constant(n, 0);
      const alone = evidence.rows.length === 0 ? tiesAlone(ties, n) : null;
      for (const {kind, chance} of kindsOf(book.label!, evidence.label, in_, space.apart, evidence.rows.length)) {
        const rows = alone ?? rowsChance(book, book.label!, kind, evidence.rows, in_, ties);
        for (let t = 0; t < n; t++) found[t]! += chance[t]! * rows[t]!;
      }
      known.set(ties, found);
    }
    return found;
  };
  const untied: Ties = {};
  const labelStray = withLabel ? strayRange(rule.id, rule.stray, scope) : {own: 1, stray: 0};
  const inner = (ties: Ties): Float64Array => {
    const alone = tiesAlone(ties, n);
    if (!withLabel) return alone;
    const base = labelStray.stray === 0 ? 0 : labelStray.stray * mean(labelled(untied).map((x, t) => x * onLabel[t]!));
    const tied = labelStray.own === 0 ? alone : labelled(Object.keys(ties).length === 0 ? untied : ties);
    return tied.map((x, t) => labelStray.own * x * onLabel[t]! + base * alone[t]!);
  };

  const total = constant(n, 0);
  const walk = (index: number, weight: Float64Array, belonging: readonly SeenPiece[]): void => {
    const piece = repeaters[index];
    if (!piece) {
      const repeats = readyRepeats(book, [...steady, ...belonging.flatMap(({repeats}) => repeats)]);
      const vector = inner(tiesOf(book, repeats, in_, space.apart));
      for (let t = 0; t < n; t++) total[t]! += weight[t]! * vector[t]!;
      return;
    }
    const marks = productOf(piece.marks, in_, n);
    const chance = strayRange(piece.piece.id, piece.piece.stray, scope);
    if (chance.own > 0) walk(index + 1, weight.map((w, t) => w * chance.own * marks[t]!), [...belonging, piece]);
    if (chance.stray > 0) {
      const base = chance.stray * strayMean(piece, marks, evidence);
      walk(index + 1, weight.map((w) => w * base), belonging);
    }
  };
  walk(0, constant(n, 1), []);
  const ids = pieces.flatMap(({marks, repeats}) => [...marks, ...repeats].map(({mark}) => mark.id));
  if (withLabel && evidence.label) ids.push(labelId);
  if (evidence.rows.length > 0) ids.push(rowsId);
  return {hub: true, ids, pieces: [...new Set([...(withLabel ? [rule.id] : []), ...pieces.map(({piece}) => piece.id)])], vector: total};
}

function strayRange(piece: string, stray: number, {fixed}: Scope): {own: number; stray: number} {
  if (fixed?.piece !== piece) return {own: 1 - stray, stray};
  return fixed.stray ? {own: 0, stray} : {own: 1 - stray, stray: 0};
}

/** What a stray piece shows on average: its marks and repeats of some other garment's month. */
function strayMean(piece: SeenPiece, marks: Float64Array, evidence: Evidence): number {
  const book = evidence.view.own!;
  const product = marks.slice();
  const each = readyRepeats(book, piece.repeats) as Map<CodeName, Repeat[]>;
  for (const [of, repeats] of each) for (const repeat of repeats) multiplyInto(product, repeatMarginal(repeat, book, of));
  return mean(product);
}
