// Photos of labels opened for drawing: the original while it is at hand, else the copy that is shown; a few are kept open.
import {waitingPhoto} from "../offline/waiting-photos.ts";
import type {Size} from "./outline.ts";

export interface PhotoPixels {
  /** Sides of the upright original. */
  readonly size: Size;
  /** Upright; perhaps smaller than the original. */
  readonly bitmap: ImageBitmap;
}

/** Each can take 50 MB and more. */
const mostOpen = 3;

const open = new Map<string, Promise<PhotoPixels | null>>();
const blobs = new Map<string, Blob>();

/** Has a photo at hand that was just taken or chosen. */
export function holdBlob(photo: string, blob: Blob): void {
  blobs.clear();
  blobs.set(photo, blob);
}

/** The original; null when it is neither at hand nor to be had. */
export async function originalOf(photo: string): Promise<Blob | null> {
  const held = blobs.get(photo) ?? (await waitingPhoto(photo).catch(() => null));
  if (held) return held;
  const response = await fetch(`/api/photos/${photo}/original`).catch(() => null);
  if (!response?.ok) return null;
  const blob = await response.blob();
  holdBlob(photo, blob);
  return blob;
}

/**
 * A photo ready to be drawn; null when it cannot be had.
 * @param size  of the original, when known: a smaller copy will do then
 */
export function pixelsOf(photo: string, size: Size | null): Promise<PhotoPixels | null> {
  const key = `${photo} ${size === null || blobs.has(photo) ? "original" : "shown"}`;
  const known = open.get(key);
  if (known) {
    open.delete(key);
    open.set(key, known);
    return known;
  }
  const opened = key.endsWith("shown") ? shown(photo, size!) : original(photo);
  open.set(key, opened);
  void opened.then((found) => found === null && open.delete(key));
  // Whoever draws from one let go of here still holds it; its memory is given back after them.
  for (const old of [...open.keys()].slice(0, -mostOpen)) open.delete(old);
  return opened;
}

async function original(photo: string): Promise<PhotoPixels | null> {
  const blob = await originalOf(photo);
  return blob && openBlob(blob);
}

/** Opens a photo from its bytes; null when it does not open. */
export async function openBlob(blob: Blob): Promise<PhotoPixels | null> {
  const bitmap = await createImageBitmap(blob, {imageOrientation: "from-image"}).catch(() => null);
  return bitmap && {bitmap, size: {width: bitmap.width, height: bitmap.height}};
}

async function shown(photo: string, size: Size): Promise<PhotoPixels | null> {
  const response = await fetch(`/api/photos/${photo}/shown`).catch(() => null);
  const bitmap = response?.ok ? await createImageBitmap(await response.blob()).catch(() => null) : null;
  return bitmap && {bitmap, size};
}
