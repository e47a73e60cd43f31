// Photos taken without a server: they are kept on this device, shown from there, and sent before the garment that shows them.
import type {Problem} from "../../engine/problem.ts";
import type {Content} from "../../store/model.ts";
import {who} from "../api.ts";
import {database} from "./database.ts";

/** As the server names them; source: store/photo/sizes.ts. */
const copies = {small: 320, shown: 1600} as const;
/** Where the service worker looks for photos. */
const cache = "ticking photos";

/**
 * Keeps a photo until the server can be reached.
 * @returns its hash; null when this browser keeps nothing, or the page came over a way on which browsers give no hashes
 */
export async function keepPhoto(blob: Blob): Promise<string | null> {
  try {
    const photo = Array.from(new Uint8Array(await crypto.subtle.digest("SHA-256", await blob.arrayBuffer())), (byte) => byte.toString(16).padStart(2, "0")).join("");
    await (await database()).put("photo", {photo, blob});
    await showCopies(photo, blob);
    return photo;
  } catch {
    return null;
  }
}

/** The original of a photo that waits; null when it does not. */
export async function waitingPhoto(photo: string): Promise<Blob | null> {
  return (await (await database()).get("photo", photo).catch(() => undefined))?.blob ?? null;
}

/**
 * Sends those photos of a garment that wait.
 * @returns problems when the server refuses one; throws when it cannot be reached
 */
export async function sendPhotosOf({photos, labels}: Content): Promise<readonly Problem[]> {
  const shown = new Set([...photos, ...labels].map((one) => one.photo));
  if (shown.size === 0) return [];
  // A browser that keeps nothing has no photo that waits.
  const db = await Promise.resolve().then(database).catch(() => null);
  for (const photo of shown) {
    const kept = await db?.get("photo", photo);
    if (!db || !kept) continue;
    const response = await fetch("/api/photos", {method: "POST", headers: {...who(), "content-type": kept.blob.type || "application/octet-stream"}, body: kept.blob});
    if (response.status === 401 || response.status === 429 || response.status >= 500) throw new Error(`the server answered ${response.status}`);
    if (!response.ok) return ((await response.json().catch(() => null)) as {problems?: readonly Problem[]} | null)?.problems ?? [refused(response.status)];
    await db.delete("photo", photo);
  }
  return [];
}

async function showCopies(photo: string, blob: Blob): Promise<void> {
  const bitmap = await createImageBitmap(blob, {imageOrientation: "from-image"});
  const shelf = await caches.open(cache);
  for (const [name, side] of Object.entries(copies)) {
    const scale = Math.min(1, side / Math.max(bitmap.width, bitmap.height));
    const canvas = new OffscreenCanvas(Math.max(1, Math.round(bitmap.width * scale)), Math.max(1, Math.round(bitmap.height * scale)));
    canvas.getContext("2d")!.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    const copy = await canvas.convertToBlob({type: "image/jpeg", quality: 0.85});
    await shelf.put(`/api/photos/${photo}/${name}`, new Response(copy, {headers: {"content-type": "image/jpeg"}}));
  }
  bitmap.close();
}

const refused = (status: number): Problem => ({code: "save/photo-refused", at: "a photo", what: `the server answered ${status}`, why: "so the photo was not taken in", fix: "take the photo away from the garment, or try again"});
