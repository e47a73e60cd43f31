// Takes a photo of a label in: to the server, or kept on this device until the server is back.
import type {Problem} from "../../engine/problem.ts";
import type {Content, Photo} from "../../store/model.ts";
import {ApiFault, problemsOf, sendFile} from "../api.ts";
import {keepPhoto} from "../offline/waiting-photos.ts";
import {holdBlob} from "./photo-pixels.ts";

const mostPhotos = 60;

/** @returns the hash of the photo, or why it was not taken in */
export async function takePhoto(file: File): Promise<{readonly photo: string; readonly problems?: undefined} | {readonly problems: readonly Problem[]; readonly photo?: undefined}> {
  try {
    const {photo} = await sendFile<Photo>("/api/photos", file);
    holdBlob(photo, file);
    return {photo};
  } catch (error) {
    const photo = error instanceof ApiFault ? null : await keepPhoto(file);
    if (photo === null) return {problems: problemsOf(error).map((problem) => ({...problem, at: file.name}))};
    holdBlob(photo, file);
    return {photo};
  }
}

/** The garment with the photo among its own. */
export function withPhoto(content: Content, photo: string, place: string): Content {
  if (content.photos.length >= mostPhotos || content.photos.some((one) => one.photo === photo)) return content;
  return {...content, photos: [...content.photos, {photo, place, caption: ""}]};
}
