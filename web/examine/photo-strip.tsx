// The photos of a garment, each tied to a place; dropped in, chosen, or taken with the phone's camera.
import type {DragEvent} from "react";
import type {Content} from "../../store/model.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import type {SeePlace} from "./marks.ts";
import {PickPhotos} from "./pick-photos.tsx";
import {useTakePhotos} from "./use-take-photos.ts";

export interface PhotoStripProps {
  readonly content: Content;
  readonly places: readonly SeePlace[];
  onChange(change: (content: Content) => Content): void;
}

export function PhotoStrip({content, places, onChange}: PhotoStripProps) {
  const {take, busy, problems} = useTakePhotos("", onChange);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    void take([...event.dataTransfer.files]);
  };
  const put = (photo: string, part: Partial<Content["photos"][number]> | null) =>
    onChange((now) => ({...now, photos: part ? now.photos.map((one) => (one.photo === photo ? {...one, ...part} : one)) : now.photos.filter((one) => one.photo !== photo)}));
  return (
    <section className="photos" aria-label="Photos" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
      <header><h2>Photos</h2><span className="quiet" role="status">{busy > 0 ? "taking in …" : content.photos.length === 0 ? "none yet" : ""}</span></header>
      <ul>
        {content.photos.map(({photo, place, caption}) => (
          <li key={photo}>
            <a href={`/api/photos/${photo}/shown`} target="_blank" rel="noreferrer"><img src={`/api/photos/${photo}/small`} alt={caption || (place ? `photo of the ${place}` : "photo")} loading="lazy" /></a>
            <select aria-label="What the photo shows" value={place} onChange={({target}) => put(photo, {place: target.value})}>
              {[...new Set(["", "front", "back", ...places.map(({name}) => name), place])].map((one) => <option key={one} value={one}>{one || "shows what?"}</option>)}
            </select>
            <input aria-label="Words for the photo" placeholder="words for it" maxLength={1000} value={caption} onChange={({target}) => put(photo, {caption: target.value})} />
            <button type="button" className="quiet" onClick={() => put(photo, null)}>Take away</button>
          </li>
        ))}
        <li><PickPhotos words="Add photos" onFiles={(files) => void take(files)} /></li>
        {matchMedia("(pointer: coarse)").matches && <li><PickPhotos words="Take a photo" camera onFiles={(files) => void take(files)} /></li>}
      </ul>
      <ProblemList problems={problems} />
      <p className="quiet">Drop them here or take them with the phone. The original is kept as it is; where it was taken is not handed on.</p>
    </section>
  );
}
