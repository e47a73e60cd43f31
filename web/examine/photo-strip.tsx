// The photos of a garment, each tied to a place; dropped in, chosen, or taken with the phone's camera.
import {useState, type DragEvent} from "react";
import type {Problem} from "../../engine/index.ts";
import type {Content, Photo} from "../../store/model.ts";
import {problemsOf, sendFile} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import type {SeePlace} from "./marks.ts";

export interface PhotoStripProps {
  readonly content: Content;
  readonly places: readonly SeePlace[];
  onChange(change: (content: Content) => Content): void;
}

const mostPhotos = 60;

export function PhotoStrip({content, places, onChange}: PhotoStripProps) {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(0);
  const take = async (files: readonly File[]) => {
    setProblems([]);
    for (const file of files) {
      setBusy((n) => n + 1);
      try {
        const {photo} = await sendFile<Photo>("/api/photos", file);
        onChange((now) => (now.photos.length >= mostPhotos || now.photos.some((one) => one.photo === photo) ? now : {...now, photos: [...now.photos, {photo, place: "", caption: ""}]}));
      } catch (error) {
        setProblems((all) => [...all, ...problemsOf(error).map((problem) => ({...problem, at: file.name}))]);
      }
      setBusy((n) => n - 1);
    }
  };
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
            <button type="button" className="quiet" onClick={() => put(photo, null)}>Take away</button>
          </li>
        ))}
        <li>
          <label className="photo-add">
            Add photos
            <input
              type="file"
              className="unseen"
              accept="image/jpeg,image/png,image/webp,image/avif"
              multiple
              onChange={({target}) => {
                void take([...(target.files ?? [])]);
                target.value = "";
              }}
            />
          </label>
        </li>
      </ul>
      <ProblemList problems={problems} />
      <p className="quiet">Drop them here or take them with the phone. The original is kept as it is; where it was taken is not handed on.</p>
    </section>
  );
}
