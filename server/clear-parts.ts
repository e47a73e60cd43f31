// Takes away files that were left half-written when a server was killed.
import {readdir, rm, stat} from "node:fs/promises";
import {join} from "node:path";

/** Nothing takes so long to be written. */
const oldMs = 24 * 3_600_000;

/** @param folder  in which files that are not whole yet end in .part */
export async function clearParts(folder: string, now: number): Promise<void> {
  const parts = (await readdir(folder)).filter((name) => name.endsWith(".part")).map((name) => join(folder, name));
  for (const path of parts) {
    const changed = await stat(path).then(({mtimeMs}) => mtimeMs, () => now);
    if (now - changed > oldMs) await rm(path, {force: true});
  }
}
