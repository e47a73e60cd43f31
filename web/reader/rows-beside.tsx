// What was read from photos besides the rows of the slip: words, and rows that their owner left out; each can be put on the slip.
import type {Content} from "../../store/model.ts";
import {settle} from "../../reader/settle.ts";
import {withoutReading, withSettled, type RowPlace} from "./label-rows.ts";

export interface BesideProps {
  readonly content: Content;
  readonly beside: readonly RowPlace[];
  onChange(change: (content: Content) => Content): void;
  /** Opens a photo that was read again. */
  onReopen(photo: string): void;
}

export function RowsBeside({content, beside, onChange, onReopen}: BesideProps) {
  if (content.labels.length === 0) return null;
  return (
    <div className="beside">
      <p className="beside-photos">
        <span className="quiet">Read from:</span>
        {content.labels.map(({photo}, i) => (
          <span key={photo} className="beside-photo">
            <button type="button" aria-label={`Open photo ${i + 1} that was read, with its outline`} onClick={() => onReopen(photo)}><img src={`/api/photos/${photo}/small`} alt="" loading="lazy" /></button>
            <button type="button" className="quiet" aria-label={`forget what was read from photo ${i + 1}`} onClick={() => onChange((now) => withoutReading(now, photo))}>forget</button>
          </span>
        ))}
      </p>
      {beside.length > 0 && (
        <details>
          <summary>{beside.length === 1 ? "One row" : `${beside.length} rows`} read besides</summary>
          <ul>
            {beside.map((place) => {
              const {read, settled} = content.labels[place.label]!.rows[place.row]!;
              const {best} = settle(read, settled);
              return (
                <li key={`${place.label} ${place.row}`}>
                  <b className="print">{best || "?"}</b> <span className="quiet">{settled?.left ? "left out by you" : "words"}</span>{" "}
                  <button type="button" className="quiet" onClick={() => onChange((now) => withSettled(now, place, settled?.left ? null : settled))}>Put it on the slip</button>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </div>
  );
}
