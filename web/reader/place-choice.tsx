// What one character of a row may be: each possibility a tap away, and room for another.
import type {ReadRow} from "../../reader/model.ts";
import type {PlaceState} from "./doubts.ts";

export interface ChoiceProps {
  /** Of the row. */
  readonly name: string;
  readonly read: ReadRow;
  readonly state: PlaceState;
  /** Another character can be typed. */
  readonly typing: boolean;
  /** null: as it was read. */
  onSettle(character: string | null): void;
}

const most = 5;

export function PlaceChoice({name, read, state: {place, choices, settled}, typing, onSettle}: ChoiceProps) {
  const nth = [...read.best.slice(0, place + 1)].filter((character) => character !== " ").length;
  return (
    <div className="choice" role="group" aria-label={`${name}, ${ordinal(nth)} character`}>
      <span className="choice-name" aria-hidden="true">{ordinal(nth)}</span>
      {choices.slice(0, most).map(({character, p}) => {
        const share = Math.max(1, Math.round(p * 100));
        return (
          <button key={character} type="button" className="chip" aria-label={`${character || "nothing there"}, ${share} in 100`} onClick={() => onSettle(character)}>
            <b className={character ? "print" : "none"}>{character || "nothing there"}</b> <span aria-hidden="true">{share}</span>
          </button>
        );
      })}
      {typing && <input className="print one-sign" aria-label={`${name}, ${ordinal(nth)} character: another one`} placeholder="?" autoCapitalize="characters" autoComplete="off" maxLength={1} size={2} value="" onChange={({target}) => /^[0-9A-Z%./#-]$/i.test(target.value) && onSettle(target.value.toUpperCase())} />}
      {settled && <button type="button" className="quiet" onClick={() => onSettle(null)}>as it was read</button>}
    </div>
  );
}

const ordinal = (n: number) => `${n}${n % 10 === 1 && n !== 11 ? "st" : n % 10 === 2 && n !== 12 ? "nd" : n % 10 === 3 && n !== 13 ? "rd" : "th"}`;
