// The label slip: rows as printed, typed or read from a photo; under the characters stands how they are read, other readings one press away.
import {useState, type DragEvent} from "react";
import {rowsId, writtenRow, type Book, type Finding, type RowText} from "../../engine/index.ts";
import type {Content} from "../../store/model.ts";
import {noAids} from "../reader/aids.ts";
import {mostRows, rowsBeside, slipRows, withRows, withSettled} from "../reader/label-rows.ts";
import {KindOffers} from "../reader/kind-offers.tsx";
import {PhotoRow} from "../reader/photo-row.tsx";
import {ReadSheet} from "../reader/read-sheet.tsx";
import {RowsBeside} from "../reader/rows-beside.tsx";
import {WordOffers} from "../reader/word-offers.tsx";
import "../reader/reader.css";
import {typedCells} from "./row-text.ts";
import {TypedRow} from "./typed-row.tsx";

export interface SlipProps {
  readonly content: Content;
  readonly finding: Finding | null;
  readonly books: readonly Book[];
  /** Name of the place where the rows stand. */
  readonly place: string;
  onChange(change: (content: Content) => Content): void;
}

const sides = ["", "face", "back", "top edge", "left edge", "right edge", "bottom edge"] as const;
type Side = Exclude<(typeof sides)[number], "">;

export function LabelSlip({content, finding, books, place, onChange}: SlipProps) {
  const rows = slipRows(content);
  const beside = rowsBeside(content);
  const written = rows.map(({seen}) => writtenRow(seen));
  const [sheet, openSheet] = useState<{photo: string | File | null} | null>(null);
  const [aids, setAids] = useState(noAids);
  const write = (next: readonly RowText[]) => onChange((now) => ({...now, garment: withRows(now.garment, next)}));
  const seen = rows.map((row) => row.seen);
  const put = (index: number, row: RowText | null) => write(row === null ? seen.filter((_, i) => i !== index) : seen.map((old, i) => (i === index ? row : old)));
  // Rows without a single character are not read, so the finding does not have them.
  const readable = written.map(({text}) => typedCells(text).length > 0);
  const readingOf = (index: number) => (readable[index] ? finding?.rows[readable.slice(0, index).filter(Boolean).length] : undefined);
  const unreadOf = (index: number) => {
    const plain = readingOf(index)?.row.text;
    return plain === undefined ? [] : (finding?.unread ?? []).filter(({mark, text}) => mark === rowsId && plain.includes(text));
  };
  const sideAndMoves = (index: number, away: (() => void) | null) => (
    <>
      <select aria-label={`Row ${index + 1}, where it stands`} value={written[index]!.at} onChange={({target}) => put(index, onSide(seen[index]!, target.value as Side | ""))}>
        {sides.map((side) => <option key={side} value={side}>{side || "on which side?"}</option>)}
      </select>
      <button type="button" className="quiet move" title="one up" aria-label={`Row ${index + 1} up`} disabled={index === 0} onClick={() => write(swapped(seen, index))}>↑</button>
      {away && <button type="button" className="quiet move" title="take away" aria-label={`Take row ${index + 1} away`} onClick={away}>×</button>}
    </>
  );
  const drop = (event: DragEvent) => {
    event.preventDefault();
    const [file] = event.dataTransfer.files;
    if (file) openSheet({photo: file});
  };
  return (
    <section className="slip-part" aria-label="Label slip" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
      <header><h2>Label slip</h2><span className="quiet">rows of the label, as printed</span></header>
      <div className="slip">
        {rows.map(({from}, index) => {
          const label = from && content.labels[from.label]!;
          const row = from && label!.rows[from.row]!;
          return from && label && row ? (
            <PhotoRow key={`${label.photo} ${from.row}`} number={index + 1} photo={label.photo} size={label.size ?? null} read={row.read} settled={row.settled} readings={readingOf(index)} unread={unreadOf(index)} aids={aids} onAids={setAids} onSettle={(settled) => onChange((now) => withSettled(now, from, settled))}>
              {sideAndMoves(index, null)}
            </PhotoRow>
          ) : (
            <TypedRow key={index} number={index + 1} row={written[index]!} readings={readingOf(index)} unread={unreadOf(index)} onText={(text) => put(index, written[index]!.at === "" ? text : {text, at: written[index]!.at as Side})}>
              {sideAndMoves(index, () => put(index, null))}
            </TypedRow>
          );
        })}
        <p className="add-rows">
          {rows.length < mostRows && <button type="button" className="plain add-row" onClick={() => write([...seen, ""])}>{rows.length === 0 ? "Type the first row" : "Another row"}</button>}
          <button type="button" className="plain" onClick={() => openSheet({photo: null})}>Read from a photo</button>
        </p>
      </div>
      <RowsBeside content={content} beside={beside} onChange={onChange} onReopen={(photo) => openSheet({photo})} />
      <WordOffers content={content} books={books} onChange={onChange} />
      <KindOffers content={content} words={beside.filter(({label, row}) => !content.labels[label]!.rows[row]!.settled?.left).map(({label, row}) => content.labels[label]!.rows[row]!.read.best)} books={books} onChange={onChange} />
      <p className="quiet">A photo of the label can be dropped here. Press a character that is worn. <b>?</b> cannot be read; <b>(3/8)</b> is 3 or 8.</p>
      {sheet && <ReadSheet content={content} books={books} first={sheet.photo} place={place} onChange={onChange} onClose={() => openSheet(null)} />}
    </section>
  );
}

const swapped = (rows: readonly RowText[], index: number) => rows.map((row, i) => (i === index ? rows[index - 1]! : i === index - 1 ? rows[index]! : row));

/** The row on another side; a typed one that stands on none is its text alone. */
function onSide(row: RowText, side: Side | ""): RowText {
  const whole = typeof row === "string" ? {text: row} : row;
  const {at: _, ...rest} = whole as Exclude<RowText, string>;
  if (side !== "") return {...rest, at: side};
  return typeof row !== "string" && "text" in rest && Object.keys(rest).length === 1 ? rest.text : rest;
}
