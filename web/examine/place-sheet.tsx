// A place of the garment opened up: how to look, and every mark that can be there.
import {useState} from "react";
import type {Garment} from "../../engine/index.ts";
import type {Content} from "../../store/model.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {MarkEntry} from "./mark-entry.tsx";
import {rowsPlace, seenOf, withSeen, type SeePlace} from "./marks.ts";
import {PlacePhotos} from "./place-photos.tsx";

export interface PlaceSheetProps {
  readonly place: SeePlace;
  readonly garment: Garment;
  /** A mark to be shown first. */
  readonly first: string | null;
  /** Marks by what looking is worth, best first. */
  readonly order: readonly string[];
  readonly content: Content;
  onChange(garment: Garment): void;
  onContent(change: (content: Content) => Content): void;
  /** Goes to the label slip. */
  onRows(): void;
  onClose(): void;
}

/** So many marks are shown before a word is asked for. */
const usual = 12;

export function PlaceSheet({place, garment, first, order, content, onChange, onContent, onRows, onClose}: PlaceSheetProps) {
  const [words, setWords] = useState("");
  const [all, setAll] = useState(false);
  // The order stays while the sheet is open: what is being filled in must not jump.
  const [ranked] = useState(() => {
    const rank = (id: string) => (id === first ? -2 : seenOf(garment, id) !== undefined ? -1 : order.includes(id) ? order.indexOf(id) : 1000);
    return [...place.marks].sort((a, b) => rank(a.id) - rank(b.id));
  });
  const asked = words.trim().toLowerCase().split(/\s+/).filter((word) => word !== "");
  const found = ranked.filter(({name, says, values}) => asked.every((word) => `${name} ${says ?? ""} ${values.map((value) => value.name).join(" ")}`.toLowerCase().includes(word)));
  const shown = all || asked.length > 0 ? found : found.slice(0, usual);
  return (
    <Dialog title={place.name.charAt(0).toUpperCase() + place.name.slice(1)} onClose={onClose} wide>
      <p>{place.look}{place.opensSeam && <b> Looking here opens a seam: the garment is harmed.</b>}</p>
      {place.id === rowsPlace && (
        <p><Button onClick={onRows}>Type the rows of figures</Button> <span className="quiet">{garment.saw.rows?.length ? `${garment.saw.rows.length} typed` : "lot, fabric, date, plant: as they stand"}</span></p>
      )}
      <PlacePhotos place={place.name} content={content} onContent={onContent} />
      {ranked.length > usual && <input type="search" aria-label="Find a mark of this place" placeholder={`Find one of ${ranked.length} marks`} value={words} onChange={({target}) => setWords(target.value)} />}
      {shown.map((mark) => <MarkEntry key={mark.id} mark={mark} seen={seenOf(garment, mark.id)} onSee={(seen) => onChange(withSeen(garment, mark.id, seen))} />)}
      {shown.length === 0 && <p className="quiet">No mark of this place has that word.</p>}
      {shown.length < found.length && <button type="button" className="plain" onClick={() => setAll(true)}>Show all {found.length} marks</button>}
    </Dialog>
  );
}
