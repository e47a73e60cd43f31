// The fingerprint of a sheet: SHA-256 over the canonical JSON of its facts, written so that it fits a QR code and can be read aloud.
import {createHash} from "node:crypto";
import {canonical} from "./canonical.ts";
import type {Facts} from "./facts.ts";

/** Source: RFC 4648, table 3 (base 32). */
const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
/** Letters of the short form: 60 bits, so that no two sheets of a shop share it by chance. */
export const shortLetters = 12;

/** 52 letters and figures. */
export const fingerprintOf = (facts: Facts): string => base32(createHash("sha256").update(canonical(facts), "utf8").digest());

/** The first letters in groups of four, for those without a camera: "MZXW-6YTB-OI2A". */
export const shortOf = (fingerprint: string): string => fingerprint.slice(0, shortLetters).match(/.{4}/g)!.join("-");

/**
 * Base 32 without padding.
 * @source RFC 4648, section 6
 * @example
 * base32(Buffer.from("foobar")) // -> "MZXW6YTBOI"
 */
export function base32(bytes: Uint8Array): string {
  let [written, held, bits] = ["", 0, 0];
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    for (; bits >= 5; bits -= 5) written += letters[(held >> (bits - 5)) & 31]!;
    held &= (1 << bits) - 1;
  }
  return bits > 0 ? written + letters[(held << (5 - bits)) & 31]! : written;
}
