// Which kind of label it is, with odds: an offer to be taken with one tap, never set by itself.
import {labelId, type Book, type RowText} from "../../engine/index.ts";
import type {Content} from "../../store/model.ts";
import {withSeen} from "../examine/marks.ts";
import {Button} from "../ui/button.tsx";
import {useKinds} from "./use-kinds.ts";

export interface KindOffersProps {
  readonly content: Content;
  /** Rows of words that were read, beside those of the slip. */
  readonly words: readonly string[];
  readonly books: readonly Book[];
  onChange(change: (content: Content) => Content): void;
}

const most = 3;
const least = 0.03;

export function KindOffers({content: {garment, labels}, words, books, onChange}: KindOffersProps) {
  const rows: readonly RowText[] = labels.length === 0 ? [] : [...words, ...(garment.saw.rows ?? [])];
  const offered = useKinds(garment, rows, books).filter(({odds}) => odds >= least).slice(0, most);
  if (offered.length === 0 || offered[0]!.kind === null) return null;
  const several = new Set(offered.map(({maker}) => maker)).size > 1;
  return (
    <section className="offers" aria-label="Kind of label">
      <h3>Which kind of label it may be</h3>
      <p className="quiet">By its rows and words. Look at the label itself, then say so.</p>
      <ul>
        {offered.map(({maker, kind, name, odds}) => (
          <li key={`${maker} ${kind}`}>
            <span>{name}<span className="quiet">{several && `${books.find(({book}) => book === maker)?.title.split(",")[0]}, `}{odds > 0.995 ? "by its rows nearly sure" : `${Math.max(1, Math.round(odds * 100))} in 100`}</span></span>
            {kind !== null && <Button aria-label={`It is this one: ${name}`} onClick={() => onChange((now) => ({...now, garment: withSeen(now.garment, labelId, kind)}))}>It is this one</Button>}
          </li>
        ))}
      </ul>
    </section>
  );
}
