// What a file is, by its first bytes: its name and what it is said to be count for nothing.
import type {Photo} from "../model.ts";

export type FileKind = Photo["mime"] | "heic" | "unknown";

/**
 * JPEG: ITU-T T.81, B.1.1.3; PNG: w3.org/TR/png, 5.2; WebP: developers.google.com/speed/webp/docs/riff_container; AVIF and HEIC: ISO/IEC 14496-12 (ftyp), brands
 * as in aomediacodec.github.io/av1-avif and ISO/IEC 23008-12.
 */
export function kindOf(bytes: Uint8Array): FileKind {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 64)).toString("latin1");
  if (text.startsWith("\xff\xd8\xff")) return "image/jpeg";
  if (text.startsWith("\x89PNG\r\n\x1a\n")) return "image/png";
  if (text.startsWith("RIFF") && text.slice(8, 12) === "WEBP") return "image/webp";
  if (text.slice(4, 8) !== "ftyp") return "unknown";
  const brands = text.slice(8).match(/.{4}/gs) ?? [];
  if (brands.some((brand) => brand === "avif" || brand === "avis")) return "image/avif";
  return brands.some((brand) => /^(?:hei[cxms]|hev[cx]|mif1)$/.test(brand)) ? "heic" : "unknown";
}
