// Where a photo of a label comes from: the phone's camera, a file, dropped here, or one that the garment has already.
import {useState, type DragEvent} from "react";
import type {Content} from "../../store/model.ts";
import {PickPhotos} from "../examine/pick-photos.tsx";

export interface PickProps {
  readonly photos: Content["photos"];
  /** Hashes of those that were read before. */
  readonly read: readonly string[];
  readonly busy: boolean;
  onFile(file: File): void;
  onPhoto(photo: string): void;
}

export function PickLabelPhoto({photos, read, busy, onFile, onPhoto}: PickProps) {
  const [over, setOver] = useState(false);
  const take = ([file]: readonly File[]) => file && onFile(file);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    take([...event.dataTransfer.files]);
  };
  const phone = matchMedia("(pointer: coarse)").matches;
  return (
    <>
      <div className={over ? "drop-label over" : "drop-label"} onDragOver={(event) => (event.preventDefault(), setOver(true))} onDragLeave={() => setOver(false)} onDrop={drop}>
        {phone && <PickPhotos words="Take a photo of the label" camera onFiles={take} />}
        <PickPhotos words={busy ? "taking it in …" : phone ? "Choose a photo" : "Drop a photo of the label here, or press to choose one"} onFiles={take} />
      </div>
      {photos.length > 0 && (
        <section aria-label="Photos of this garment">
          <p className="quiet">or one that the garment has:</p>
          <ul className="pick-photo">
            {photos.map(({photo, place, caption}, i) => (
              <li key={photo}>
                <button type="button" aria-label={`Read photo ${i + 1}${place || caption ? `: ${caption || place}` : ""}${read.includes(photo) ? ", read before" : ""}`} onClick={() => onPhoto(photo)}>
                  <img src={`/api/photos/${photo}/small`} alt="" loading="lazy" />
                  <span>{read.includes(photo) ? "read before" : caption || place || `photo ${i + 1}`}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="quiet">Lay the label flat, let light fall on it from the side, and let it fill the picture. Which way up does not matter. The photo is read on this device and goes nowhere else.</p>
    </>
  );
}
