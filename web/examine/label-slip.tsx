// The label slip: rows typed as printed; under the characters stands how they are read, other readings one press away.
import {useState} from "react";
import {rowsId, writtenRow, type Finding, type Garment, type WrittenRow} from "../../engine/index.ts";
import {DoubtSheet} from "./doubt-sheet.tsx";
import {RowReading} from "./row-reading.tsx";
import {replaceCell, typedCells, type TypedCell} from "./row-text.ts";

export interface SlipProps {
  readonly garment: Garment;
  readonly finding: Finding | null;
  onChange(garment: Garment): void;
}

const sides = ["", "face", "back", "top edge", "left edge", "right edge", "bottom edge"] as const;
const mostRows = 12;

export function LabelSlip({garment, finding, onChange}: SlipProps) {
  const rows = (garment.saw.rows ?? []).map(writtenRow);
  const [doubt, setDoubt] = useState<{row: number; cell: TypedCell} | null>(null);
  const write = (next: readonly WrittenRow[]) => {
    const {rows: _, ...rest} = garment.saw;
    const written = next.map(({text, at}) => (at === "" ? text : {text, at}));
    onChange({...garment, saw: (written.length === 0 ? rest : {...rest, rows: written}) as Garment["saw"]});
  };
  const put = (index: number, row: WrittenRow | null) => write(row ? rows.map((old, i) => (i === index ? row : old)) : rows.filter((_, i) => i !== index));
  // Rows without a single character are not read, so the finding does not have them.
  const readable = rows.map(({text}) => typedCells(text).length > 0);
  const readingOf = (index: number) => (readable[index] ? finding?.rows[readable.slice(0, index).filter(Boolean).length] : undefined);
  const unreadOf = (index: number) => {
    const plain = readingOf(index)?.row.text;
    return plain === undefined ? [] : (finding?.unread ?? []).filter(({mark, text}) => mark === rowsId && plain.includes(text));
  };
  return (
    <section className="slip-part" aria-label="Label slip">
      <header><h2>Label slip</h2><span className="quiet">rows of the label, as printed</span></header>
      <div className="slip">
        {rows.map((row, index) => (
          <div key={index} className="slip-row">
            <div className="slip-line">
              <input className="print" aria-label={`Row ${index + 1}, as printed`} autoCapitalize="characters" autoComplete="off" spellCheck={false} maxLength={200} value={row.text} onChange={({target}) => put(index, {...row, text: target.value})} />
              <select aria-label={`Row ${index + 1}, where it stands`} value={row.at} onChange={({target}) => put(index, {...row, at: target.value})}>
                {sides.map((side) => <option key={side} value={side}>{side || "on which side?"}</option>)}
              </select>
              <button type="button" className="quiet" title="one up" aria-label={`Row ${index + 1} up`} disabled={index === 0} onClick={() => write(swapped(rows, index))}>↑</button>
              <button type="button" className="quiet" title="take away" aria-label={`Take row ${index + 1} away`} onClick={() => put(index, null)}>×</button>
            </div>
            <RowReading text={row.text} readings={readingOf(index)} unread={unreadOf(index)} onCell={(cell) => setDoubt({row: index, cell})} />
          </div>
        ))}
        {rows.length < mostRows && <button type="button" className="plain add-row" onClick={() => write([...rows, {text: "", at: ""}])}>{rows.length === 0 ? "Type the first row" : "Another row"}</button>}
      </div>
      <p className="quiet">Press a character that is worn. <b>?</b> cannot be read; <b>(3/8)</b> is 3 or 8.</p>
      {doubt && (
        <DoubtSheet
          cell={doubt.cell}
          onSet={(text) => {
            put(doubt.row, {...rows[doubt.row]!, text: replaceCell(rows[doubt.row]!.text, doubt.cell, text)});
            setDoubt(null);
          }}
          onClose={() => setDoubt(null)}
        />
      )}
    </section>
  );
}

const swapped = (rows: readonly WrittenRow[], index: number) => rows.map((row, i) => (i === index ? rows[index - 1]! : i === index - 1 ? rows[index]! : row));
