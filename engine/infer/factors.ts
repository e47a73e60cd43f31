// The factors of one case: the label with all that hangs on it, the other pieces, the marks that stand alone.
import {affine, mean} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {caseKey, type Case} from "../rule/when.ts";
import {labelMatters, type CaseSpace} from "./cases.ts";
import {rowsId, type Evidence} from "./evidence.ts";
import type {Factor, Scope} from "./factor.ts";
import {hubFactor} from "./hub.ts";
import {labelPiece, mixStray, productOf, sortPieces, type SeenPiece} from "./pieces.ts";
import {labelId} from "./ready-book.ts";

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
    factors.push({hub: null, ids: piece.marks.map(({mark}) => mark.id), pieces: [piece.piece.id], vector: mixFixed(product, piece, scope), own: product});
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
