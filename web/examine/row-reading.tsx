// One row as it is read: brackets with names under its characters, and the other readings.
import {Fragment, useState} from "react";
import type {Finding, RowReadings} from "../../engine/index.ts";
import {choicesOf, typedCells, type TypedCell} from "./row-text.ts";

export interface RowReadingProps {
  readonly text: string;
  readonly readings: RowReadings | undefined;
  /** Codes of this row that give no date. */
  readonly unread: readonly Unread[];
  /** For a row read from a photo, which is shown as the chosen reading takes it: what its reader and its owner say of a character. */
  readonly state?: (text: string, cell: TypedCell) => "doubtful" | "settled" | null;
  /** The readings are of the row as it was before. */
  readonly stale?: boolean;
  /** @param text  the row in which the character stands */
  onCell(cell: TypedCell, text: string): void;
}

type Unread = Finding["unread"][number];

/** Readings less likely than this are not offered. */
const least = 0.005;

export function RowReading({text: given, readings, unread, state, stale = false, onCell}: RowReadingProps) {
  const [chosen, choose] = useState<string | null>(null);
  const told = (readings?.readings ?? []).filter(({probability}, i) => i === 0 || probability >= least);
  const current = told.find((reading) => sayReading(reading) === chosen) ?? told[0];
  const text = state && current && !stale ? plainText(current.row) : given;
  const cells = typedCells(text);
  if (cells.length === 0) return null;
  // Brackets of the reading before stay under the characters while a new one is worked out, as far as they still fit.
  const doubt = cells.filter(({text: one}) => one.startsWith("(")).map((cell) => `${signOf(cell)} is worn: ${choicesOf(cell.text).map(({character, weight}) => `${character} (${weight} in 100)`).join(", ")}.`).join(" ");
  const brackets = current && current.row.cells.length === cells.length ? (current?.brackets ?? []) : [];
  return (
    <>
      <div className="read-row" aria-label={`Read as ${current ? sayReading(current) : "nothing yet"}`}>
        {groupsOf(cells, brackets).map(({field, cells: some}, i) => (
          <Fragment key={i}>
          {some[0]!.sign && <span className="between" aria-hidden="true">{some[0]!.sign}</span>}
          <span className={field ? `bracket ${field === "date" ? "date" : ""}` : "bracket none"}>
            <span className="signs">
              {some.map((cell) => {
                const how = cell.doubtful ? "doubtful" : (state?.(text, cell) ?? null);
                return <button key={cell.from} type="button" className={how ? `sign ${how}` : "sign"} aria-label={`${signOf(cell)}${how === "doubtful" ? ", in doubt" : how === "settled" ? ", settled by you" : ""}: say what it may be`} onClick={() => onCell(cell, text)}>{signOf(cell)}</button>;
              })}
            </span>
            {field && <span className="field-name">{field}</span>}
          </span>
          </Fragment>
        ))}
      </div>
      {doubt && <p className="quiet">{doubt}</p>}
      {unread.map(({text: code, why}) => <p key={code} className="unread">“{code}” is no date as it stands: {why}.</p>)}
      {told.length > 0 && !(told.length === 1 && told[0]!.date === null) && (
        <ul className="readings" aria-busy={stale}>
          {told.slice(0, 5).map((reading) => {
            const words = sayReading(reading);
            return (
              <li key={words}>
                <button type="button" aria-pressed={reading === current} onClick={() => choose(words)}>
                  <span className="share" aria-hidden="true" style={{width: Math.max(3, reading.probability * 42)}} />
                  <span>{words}</span>
                  <span className="quiet">{reading.probability > 0.995 ? "sure" : `${Math.max(1, Math.round(reading.probability * 100))} in 100`}</span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
    </>
  );
}

/** The row as a reading takes it, without the edge it stands on. */
export const plainText = ({text, at}: RowReadings["row"]) => (at ? text.slice(0, -at.length - 2) : text);

const signOf = ({text}: TypedCell) => (text.startsWith("(") ? text.slice(1, -1).split("/")[0]!.split(":")[0]!.trim().toUpperCase() : text.toUpperCase());

function sayReading({date, plant, lot, fabric}: RowReadings["readings"][number]): string {
  const parts = [date, plant && `plant ${plant}`, lot && `lot ${lot}`, fabric && `fabric ${fabric}`].filter((part) => part);
  return parts.length > 0 ? parts.join(", ") : "no date on this row";
}

function groupsOf(cells: readonly TypedCell[], brackets: readonly {readonly field: string; readonly from: number; readonly until: number}[]): {field: string | null; cells: TypedCell[]}[] {
  const groups: {field: string | null; cells: TypedCell[]; bracket: unknown}[] = [];
  cells.forEach((cell, i) => {
    const bracket = brackets.find(({from, until}) => i >= from && i < until) ?? null;
    const last = groups.at(-1);
    if (last && last.bracket === bracket) last.cells.push(cell);
    else groups.push({field: bracket?.field ?? null, cells: [cell], bracket});
  });
  return groups;
}
