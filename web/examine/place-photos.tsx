// The photos that show one place of the garment, and a way to add another.
import type {Content} from "../../store/model.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {PickPhotos} from "./pick-photos.tsx";
import {useTakePhotos} from "./use-take-photos.ts";

export interface PlacePhotosProps {
  /** Name of the place. */
  readonly place: string;
  readonly content: Content;
  onContent(change: (content: Content) => Content): void;
}

export function PlacePhotos({place, content, onContent}: PlacePhotosProps) {
  const {take, busy, problems} = useTakePhotos(place, onContent);
  const own = content.photos.filter((one) => one.place === place);
  return (
    <>
      <div className="place-photos">
        {own.map(({photo, caption}) => (
          <a key={photo} href={`/api/photos/${photo}/shown`} target="_blank" rel="noreferrer"><img src={`/api/photos/${photo}/small`} alt={caption || `photo of the ${place}`} /></a>
        ))}
        <PickPhotos words={busy > 0 ? "taking in …" : "Add a photo of it"} onFiles={(files) => void take(files)} />
      </div>
      <ProblemList problems={problems} />
    </>
  );
}
