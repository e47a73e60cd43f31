// The rows found in a photo, at a glance: the picture of each, and how it is read.
import {codeRows} from "../../commands/reading/code-rows.ts";
import type {LabelReading} from "../../reader/model.ts";
import {settle} from "../../reader/settle.ts";
import {placesOf} from "./doubts.ts";
import type {Size} from "./outline.ts";
import {RowCrop} from "./row-crop.tsx";

export function RowsFound({photo, size, rows}: {readonly photo: string; readonly size: Size | null; readonly rows: LabelReading["rows"]}) {
  const codes = new Set(codeRows(rows.map(({read}) => read.best)));
  return (
    <ol className="rows-found">
      {rows.map(({read, settled}, i) => {
        const doubts = placesOf(read, settled).filter(({doubtful}) => doubtful).length;
        const {best} = settle(read, settled);
        return (
          <li key={i}>
            <RowCrop photo={photo} size={size} quad={read.quad} alt={`Row ${i + 1} in the photo`} height={34} />
            <span className="found-text"><b className="print">{best || "?"}</b> <span className="quiet">{settled?.left ? "left out" : !codes.has(i) ? "words" : doubts === 0 ? "clear" : doubts === 1 ? "one character in doubt" : `${doubts} characters in doubt`}</span></span>
          </li>
        );
      })}
    </ol>
  );
}
