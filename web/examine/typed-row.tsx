// One row of the slip as it is typed: its text, how it is read, and a way to put each character in doubt.
import {useState, type ReactNode} from "react";
import type {Finding, RowReadings, WrittenRow} from "../../engine/index.ts";
import {DoubtSheet} from "./doubt-sheet.tsx";
import {RowReading} from "./row-reading.tsx";
import {replaceCell, type TypedCell} from "./row-text.ts";

export interface TypedRowProps {
  /** From 1. */
  readonly number: number;
  readonly row: WrittenRow;
  readonly readings: RowReadings | undefined;
  readonly unread: Finding["unread"];
  onText(text: string): void;
  /** Where the row stands, its moving and its taking away. */
  readonly children: ReactNode;
}

export function TypedRow({number, row, readings, unread, onText, children}: TypedRowProps) {
  const [doubt, setDoubt] = useState<TypedCell | null>(null);
  return (
    <div className="slip-row">
      <div className="slip-line">
        <input className="print" aria-label={`Row ${number}, as printed`} autoCapitalize="characters" autoComplete="off" spellCheck={false} maxLength={200} value={row.text} onChange={({target}) => onText(target.value)} />
        {children}
      </div>
      <RowReading text={row.text} readings={readings} unread={unread} onCell={setDoubt} />
      {doubt && (
        <DoubtSheet
          cell={doubt}
          onSet={(text) => {
            onText(replaceCell(row.text, doubt, text));
            setDoubt(null);
          }}
          onClose={() => setDoubt(null)}
        />
      )}
    </div>
  );
}
