// The factors of one case: the label with all that hangs on it, the other pieces, the marks that stand alone.
import {affine, mean, multiplyInto, times} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {caseKey, type Case} from "../rule/when.ts";
import {labelMatters, type CaseSpace} from "./cases.ts";
import {rowsId, type Evidence} from "./evidence.ts";
import {kindsOf, readyRepeats, repeatMarginal, rowsChance, tiesAlone, tiesOf, type StrayChance, type TiedRepeat, type Ties} from "./hub.ts";
import {labelPiece, mixStray, productOf, sortPieces, type SeenPiece} from "./pieces.ts";
import {labelId} from "./ready-book.ts";

/** A vector over months that multiplies the others, and the marks that it is made of. */
export interface Factor {
  /** Set when this is the label with all that hangs on it. */
  readonly hub: Hub | null;
  readonly ids: readonly string[];
  readonly pieces: readonly string[];
  readonly vector: Float64Array;
}

/** Which marks take part, and, to ask what a stray piece would mean, a piece fixed as stray or not. */
export interface Scope {
  keep(id: string): boolean;
  readonly fixed?: {readonly piece: string; readonly stray: boolean};
  /** Only the part in which the label kind was misjudged. */
  readonly misjudged?: boolean;
}

export const everything: Scope = {keep: () => true};

/** The factors of a case, the hub (label, rows, repeats) first when there is one. */
export function factorsOf(evidence: Evidence, space: CaseSpace, in_: Case, scope: Scope): Factor[] {
  const pieces = sortPieces(evidence, scope.keep);
  const kept = {...evidence, label: scope.keep(labelId) ? evidence.label : null, rows: scope.keep(rowsId) ? evidence.rows : []};
  const label = labelPiece(evidence);
  const withLabel = evidence.view.own?.label ? labelMatters(kept, space.apart) : false;
  const withCodes = space.apart.plant.length > 0 || space.apart.lot.length > 0;
  const inHub = (piece: SeenPiece) => piece.repeats.length > 0 || (withLabel && piece.piece.id === label.id);
  const hub = pieces.filter(inHub);
  const factors: Factor[] = [];
  if (evidence.view.own && (withLabel || withCodes || hub.length > 0)) {
    factors.push(rememberedHub(evidence, hubKey(in_, hub, kept, scope), () => hubFactor(kept, space, in_, hub, withLabel, scope)));
  }
  for (const piece of pieces) {
    if (inHub(piece)) continue;
    const product = productOf(piece.marks, in_, evidence.view);
    factors.push({hub: null, ids: piece.marks.map(({mark}) => mark.id), pieces: [piece.piece.id], vector: mixFixed(product, piece, scope)});
  }
  return factors;
}

const hubs = new WeakMap<Evidence, Map<string, Factor>>();

/** The hub is the costly factor, and the ledger asks for the same one many times. */
function rememberedHub(evidence: Evidence, key: string, make: () => Factor): Factor {
  let known = hubs.get(evidence);
  if (!known) hubs.set(evidence, (known = new Map()));
  let found = known.get(key);
  if (!found) known.set(key, (found = make()));
  return found;
}

function hubKey(in_: Case, pieces: readonly SeenPiece[], {label, rows}: Pick<Evidence, "label" | "rows">, {fixed, misjudged}: Scope): string {
  const marks = pieces.flatMap((piece) => [...piece.marks, ...piece.repeats].map(({mark}) => mark.id)).join();
  const inHub = fixed && (pieces.some(({piece}) => piece.id === fixed.piece) || label || rows.length > 0);
  return `${caseKey(in_)}|${label ? 1 : 0}${rows.length > 0 ? 1 : 0}${misjudged ? 1 : 0}|${marks}|${inHub ? `${fixed.piece}${fixed.stray}` : ""}`;
}

function mixFixed(product: Float64Array, {piece}: SeenPiece, {fixed}: Scope): Float64Array {
  if (fixed?.piece !== piece.id) return mixStray(product, piece.stray);
  return fixed.stray ? constant(product.length, piece.stray * mean(product)) : affine(product, 1 - piece.stray);
}

/**
 * One way in which the hub's pieces belong or are stray. The label's rows enter tied to the repeats that belong,
 * and, were the label itself stray, averaged over the months.
 */
export interface HubTerm {
  readonly ties: Ties;
  /** Chance by month of the other marks on the hub's pieces, all stray rates included, the label belonging. */
  readonly own: Float64Array;
  /** Chance by month with the label stray; multiplies the average of label and marks on it. */
  readonly stray: Float64Array;
}

export interface Hub {
  readonly terms: readonly HubTerm[];
  /** Marks on the label's piece beside label kind and rows. */
  readonly onLabel: Float64Array;
  readonly withLabel: boolean;
  readonly untied: Ties;
}

/** Takes the hub apart into terms. Formula: docs/model.md, sections 5 and 6. */
function hubOf(evidence: Evidence, space: CaseSpace, in_: Case, pieces: readonly SeenPiece[], withLabel: boolean, scope: Scope): Hub {
  const book = evidence.view.own!;
  const n = book.n;
  const rule = labelPiece(evidence);
  const onLabel = productOf(pieces.filter(({piece}) => withLabel && piece.id === rule.id).flatMap(({marks}) => marks), in_, evidence.view);
  const label = withLabel ? strayRange(rule.id, rule.stray, scope) : {own: 1, stray: 0};
  const untied: Ties = {};
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
      const found = tiesOf(book, readyRepeats(book, tied), in_, space.apart);
      const free = tiesAlone(found, n);
      terms.push({
        ties: Object.keys(found).length === 0 ? untied : found,
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
    const rows = alone ?? rowsChance(book, book.label!, kind, evidence.rows, in_, ties);
    for (let t = 0; t < book.n; t++) result[t]! += chance[t]! * rows[t]!;
  }
  return result;
}

function hubFactor(evidence: Evidence, space: CaseSpace, in_: Case, pieces: readonly SeenPiece[], withLabel: boolean, scope: Scope): Factor {
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
  return {hub, ids, pieces: [...new Set(withLabel ? [labelPiece(evidence).id, ...names] : names)], vector};
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
