// Takes photos in one after the other, and ties each to a place of the garment.
import {useState} from "react";
import type {Problem} from "../../engine/index.ts";
import type {Content, Photo} from "../../store/model.ts";
import {problemsOf, sendFile} from "../api.ts";

const mostPhotos = 60;

/** @param place  name of the place that the photos show; empty when it is said later */
export function useTakePhotos(place: string, onChange: (change: (content: Content) => Content) => void) {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(0);
  const take = async (files: readonly File[]) => {
    setProblems([]);
    for (const file of files) {
      setBusy((n) => n + 1);
      try {
        const {photo} = await sendFile<Photo>("/api/photos", file);
        onChange((now) => (now.photos.length >= mostPhotos || now.photos.some((one) => one.photo === photo) ? now : {...now, photos: [...now.photos, {photo, place, caption: ""}]}));
      } catch (error) {
        setProblems((all) => [...all, ...problemsOf(error).map((problem) => ({...problem, at: file.name}))]);
      }
      setBusy((n) => n - 1);
    }
  };
  return {take, busy, problems};
}
