// The odd marks: those that probably do not belong to the garment's date.
import type {Evaluation} from "../infer/evaluate.ts";
import {findMark, rowsId} from "../infer/evidence.ts";
import type {OddMark} from "../infer/finding.ts";
import type {Ledger} from "./ledger.ts";

/** From this chance on a mark is named as odd. Source: own choice; one in three is worth a second look. */
const worthSaying = 1 / 3;

/** Names the marks and pieces that are odd, likeliest first. A piece that is odd speaks for the marks on it. */
export function oddMarks(ledger: Ledger, evaluation: Evaluation): OddMark[] {
  const pieces = ledger.pieces.filter(({stray}) => stray >= worthSaying);
  const spoken = new Set(pieces.flatMap(({marks}) => marks));
  const marks = ledger.lines.filter(({id, stray}) => stray !== null && stray >= worthSaying && !spoken.has(id));
  const foreign = evaluation.evidence.foreign.filter(({id}) => id !== rowsId).map(({id}) => ({id, says: `${id} belongs to another maker`, probability: 1 as OddMark["probability"], piece: false}));
  return [
    ...pieces.map(({id, says, stray}) => ({id, says, probability: stray, piece: true})),
    ...marks.map(({id, stray}) => ({id, says: `${findMark(evaluation.evidence.view, id)?.mark.name ?? id} does not fit`, probability: stray!, piece: false})),
    ...foreign,
  ].sort((a, b) => b.probability - a.probability);
}
