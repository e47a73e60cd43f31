// A row of the slip that was read from a photo: its picture above its characters, and what is in doubt one tap from settled.
import {useState, type ReactNode} from "react";
import type {Finding, RowReadings} from "../../engine/index.ts";
import type {ReadRow, SettledRow} from "../../reader/model.ts";
import {settle} from "../../reader/settle.ts";
import {plainText, RowReading} from "../examine/row-reading.tsx";
import type {TypedCell} from "../examine/row-text.ts";
import type {Aids} from "./aids.ts";
import {otherTexts, placesIn, placesOf} from "./doubts.ts";
import {settlePlace} from "./label-rows.ts";
import {LookSheet} from "./look-sheet.tsx";
import type {Size} from "./outline.ts";
import {PlaceChoice} from "./place-choice.tsx";
import {RowCrop} from "./row-crop.tsx";

export interface PhotoRowProps {
  /** From 1. */
  readonly number: number;
  readonly photo: string;
  readonly size: Size | null;
  readonly read: ReadRow;
  readonly settled: SettledRow | null;
  readonly readings: RowReadings | undefined;
  readonly unread: Finding["unread"];
  readonly aids: Aids;
  onAids(aids: Aids): void;
  onSettle(settled: SettledRow | null): void;
  /** Where the row stands and its moving. */
  readonly children: ReactNode;
}

/** Beyond these the doubtful places wait for a tap. */
const mostOpen = 4;

export function PhotoRow({number, photo, size, read, settled, readings, unread, aids, onAids, onSettle, children}: PhotoRowProps) {
  const [opened, open] = useState<number | null>(null);
  const [looking, look] = useState(false);
  const places = placesOf(read, settled);
  const now = settle(read, settled);
  const typed = settled?.text ?? null;
  const doubtful = places.filter((place) => place.doubtful);
  const stateOf = (text: string, {from}: TypedCell) => {
    const place = places[placesIn(read, text)[from] ?? -1];
    return place?.settled ? "settled" : place?.doubtful ? "doubtful" : null;
  };
  // The engine answers a moment later; until then the row stands as its owner has just settled it.
  const first = readings?.readings[0];
  const fresh = first !== undefined && now.strings.some(({text}) => text === plainText(first.row));
  const shown = fresh ? plainText(first.row) : now.best;
  const others = otherTexts(read, settled, shown);
  const inChoice = places.filter(({place, choices}) => place === opened || (choices.length > 1 && doubtful.slice(0, mostOpen).some((one) => one.place === place)));
  const name = `Row ${number}`;
  return (
    <div className="slip-row photo-row" role="group" aria-label={`${name}, read from a photo`}>
      <button type="button" className="crop-button" aria-label={`${name} in the photo: look closely`} onClick={() => look(true)}>
        <RowCrop photo={photo} size={size} quad={read.quad} alt={`${name} in the photo`} aids={aids} />
      </button>
      {typed !== null && <input className="print" aria-label={`${name}, as printed`} autoCapitalize="characters" autoComplete="off" spellCheck={false} maxLength={200} value={typed} onChange={({target}) => onSettle({text: target.value, places: {}, left: false})} />}
      <RowReading
        text={typed ?? now.best}
        readings={readings}
        unread={unread}
        {...(typed === null && {state: stateOf, stale: !fresh})}
        onCell={(cell, text) => {
          if (typed !== null) return;
          const place = placesIn(read, text)[cell.from] ?? null;
          open(place === opened ? null : place);
        }}
      />
      {inChoice.map((place) => (
        <PlaceChoice key={place.place} name={name} read={read} state={place} typing={place.place === opened} onSettle={(character) => (onSettle(settlePlace(settled, place.place, character)), open(null))} />
      ))}
      {doubtful.length > mostOpen && <p className="quiet">{doubtful.length - mostOpen} more characters are in doubt: press one, or type the row.</p>}
      {others.length > 0 && (
        <div className="choice" role="group" aria-label={`${name}, other readings of the whole row`}>
          <span className="choice-name">or the row is</span>
          {others.map(({text, p}) => (
            <button key={text} type="button" className="chip" aria-label={`${text}, ${inHundred(p)}`} onClick={() => onSettle({text, places: {}, left: false})}><b className="print">{text}</b> <span aria-hidden="true">{short(p)}</span></button>
          ))}
        </div>
      )}
      <div className="row-ways">
        {typed === null && <button type="button" className="quiet" onClick={() => onSettle({text: shown, places: {}, left: false})}>Type it</button>}
        {settled !== null && <button type="button" className="quiet" onClick={() => onSettle(null)}>As it was read</button>}
        <button type="button" className="quiet" onClick={() => onSettle({text: null, places: {}, left: true})}>Not a row</button>
        {children}
      </div>
      {looking && <LookSheet title={`${name} in the photo`} photo={photo} size={size} quad={read.quad} aids={aids} onAids={onAids} onClose={() => look(false)} />}
    </div>
  );
}

const short = (p: number) => String(Math.max(1, Math.round(p * 100)));
const inHundred = (p: number) => `${short(p)} in 100`;
