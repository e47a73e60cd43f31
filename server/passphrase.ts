// Keeps a passphrase as a hash that is slow and takes much memory to try, and checks one against it.
import {randomBytes, scrypt, timingSafeEqual} from "node:crypto";

/** Source: RFC 7914 (scrypt); OWASP Password Storage Cheat Sheet: at least N = 2^17, r = 8, p = 1, that is 128 MB for each try. */
const cost = {N: 2 ** 17, r: 8, p: 1};
const keyBytes = 32;

/** The setting that holds the hash. */
export const passphraseKey = "passphrase.hash";

/** The fewest characters of a passphrase. Source: NIST SP 800-63B, revision 4, for a passphrase with nothing beside it: 15 (from memory). */
export const fewestCharacters = 15;

/** The hash with its salt and cost, as one line of text. */
export async function hashPassphrase(passphrase: string): Promise<string> {
  const salt = randomBytes(16);
  const key = await derive(passphrase, salt, cost);
  return ["scrypt", cost.N, cost.r, cost.p, salt.toString("base64url"), key.toString("base64url")].join("$");
}

/** Whether a passphrase is the one whose hash was kept; false for a hash that cannot be read. */
export async function isPassphrase(passphrase: string, kept: string): Promise<boolean> {
  const [kind, n, r, p, salt, key] = kept.split("$");
  if (kind !== "scrypt" || !salt || !key) return false;
  const wanted = Buffer.from(key, "base64url");
  const found = await derive(passphrase, Buffer.from(salt, "base64url"), {N: Number(n), r: Number(r), p: Number(p)});
  return found.length === wanted.length && timingSafeEqual(found, wanted);
}

/** Letters that look the same are the same however a keyboard composes them; source: NIST SP 800-63B, section 5.1.1.2: NFKC before hashing. */
function derive(passphrase: string, salt: Buffer, {N, r, p}: typeof cost): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(passphrase.normalize("NFKC"), salt, keyBytes, {N, r, p, maxmem: 256 * N * r}, (error, key) => (error ? reject(error) : resolve(key)));
  });
}
