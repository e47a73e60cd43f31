// Marks that sit on one piece are stray together: a label from another garment takes all its marks along.
import {affine, mean, multiplyInto} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import type {Case} from "../rule/when.ts";
import {cutTo, type Evidence, type MakerView, type SeenMark, type SeenRepeat} from "./evidence.ts";

export interface PieceRule {
  readonly id: string;
  readonly name: string;
  readonly stray: number;
  readonly says: string;
}

/** A piece with what was seen on it. */
export interface SeenPiece {
  readonly piece: PieceRule;
  readonly marks: readonly SeenMark[];
  readonly repeats: readonly SeenRepeat[];
}

const ownPiece = (id: string): PieceRule => ({id, name: id, stray: 0, says: `${id} from another garment`});

/** A piece as the books of the maker define it; the maker's own book speaks first. */
export function pieceRule({view}: Evidence, id: string): PieceRule {
  for (const book of [view.own, ...view.books]) {
    const found = book?.book.pieces[id];
    if (found) return {id, name: found.name, stray: found.stray, says: found.says ?? `${found.name} from another garment`};
  }
  return ownPiece(id);
}

/** The piece of the label and its rows. */
export function labelPiece(evidence: Evidence): PieceRule {
  return pieceRule(evidence, evidence.view.own?.label?.mark.mark.piece ?? "care-label");
}

/** Sorts marks by piece; marks on no piece come one by one, with a piece that is never stray. */
export function sortPieces(evidence: Evidence, keep: (id: string) => boolean): SeenPiece[] {
  const pieces = new Map<string, {piece: PieceRule; marks: SeenMark[]; repeats: SeenRepeat[]}>();
  const at = (id: string, piece: string | undefined) => {
    const key = piece ?? `alone ${id}`;
    let found = pieces.get(key);
    if (!found) pieces.set(key, (found = {piece: piece ? pieceRule(evidence, piece) : ownPiece(key), marks: [], repeats: []}));
    return found;
  };
  for (const mark of evidence.marks) if (keep(mark.mark.id)) at(mark.mark.id, mark.mark.mark.piece).marks.push(mark);
  for (const repeat of evidence.repeats) if (keep(repeat.mark.id)) at(repeat.mark.id, repeat.mark.mark.piece).repeats.push(repeat);
  return [...pieces.values()];
}

/** The product of marks' chances by month. */
export function productOf(marks: readonly SeenMark[], in_: Case, view: MakerView): Float64Array {
  const result = constant(view.prior.length, 1);
  for (const {mark, seen} of marks) multiplyInto(result, cutTo(view, mark.likelihood(seen, in_), mark.axis.from));
  return result;
}

/** Mixes a piece's product with its average over months, by the piece's stray rate. */
export function mixStray(product: Float64Array, stray: number): Float64Array {
  if (stray === 0) return product;
  return affine(product, 1 - stray, stray * mean(product));
}
