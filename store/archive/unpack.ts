// Unpacks the files of an archive into a folder of their own, each checked by its size and hash on the way.
import {createHash} from "node:crypto";
import {createWriteStream} from "node:fs";
import {mkdir} from "node:fs/promises";
import {dirname, join} from "node:path";
import {Transform} from "node:stream";
import {pipeline} from "node:stream/promises";
import type {Problem} from "../../engine/problem.ts";
import {dataNamesOf, form, formVersion, manifestName, manifestSchema, photoName, type Manifest} from "./manifest.ts";
import {reasonOf, type OpenZip} from "./open-zip.ts";
import * as say from "./problems.ts";

/** The list of files, checked against the files that are there. */
export async function readManifest(zip: OpenZip, archive: string): Promise<{readonly manifest: Manifest; readonly problems?: undefined} | {readonly manifest?: undefined; readonly problems: readonly Problem[]}> {
  let told: unknown;
  try {
    const pieces: Buffer[] = [];
    for await (const piece of await zip.stream(manifestName)) pieces.push(piece as Buffer);
    told = JSON.parse(Buffer.concat(pieces).toString("utf8"));
  } catch (error) {
    return {problems: [say.notOurs(archive, reasonOf(error))]};
  }
  const {form: given, version} = (told ?? {}) as {form?: unknown; version?: unknown};
  if (given === form && typeof version === "number" && version > formVersion) return {problems: [say.newer(archive, version, formVersion)]};
  const read = manifestSchema.safeParse(told);
  if (!read.success) return {problems: [say.notOurs(archive, `its ${manifestName} is not as it should be`)]};
  const manifest = read.data;
  const listed = new Set(manifest.files.map(({name}) => name));
  if (listed.size < manifest.files.length) return {problems: [say.notOurs(archive, `its ${manifestName} names a file twice`)]};
  const missing = [...new Set([...dataNamesOf(manifest.version), ...listed])].filter((name) => !listed.has(name) || !zip.entries.has(name)).map((name) => say.entryMissing(archive, name));
  const misnamed = manifest.files.filter(({name, sha256}) => name.startsWith("photos/") && name !== photoName(sha256)).map(({name}) => say.entryChanged(archive, name));
  const unlisted = [...zip.entries.keys()].filter((name) => name !== manifestName && !listed.has(name)).map((name) => say.strangeEntry(archive, name));
  const problems = [...missing, ...misnamed, ...unlisted].slice(0, 20);
  return problems.length > 0 ? {problems} : {manifest};
}

/** @returns what is wrong; stops at the first file that is */
export async function unpack(zip: OpenZip, {files}: Manifest, archive: string, folder: string): Promise<readonly Problem[]> {
  for (const {name, bytes, sha256} of files) {
    if (zip.entries.get(name)!.uncompressedSize !== bytes) return [say.entryChanged(archive, name)];
    const path = join(folder, name);
    await mkdir(dirname(path), {recursive: true});
    const hash = createHash("sha256");
    const through = new Transform({
      transform(piece: Buffer, _encoding, done) {
        hash.update(piece);
        done(null, piece);
      },
    });
    try {
      await pipeline(await zip.stream(name), through, createWriteStream(path, {flags: "wx", flush: true}));
    } catch (error) {
      // Errors of the disk have a code, those of the zip have none or the decompressor's.
      if (/^E[A-Z]+$/.test((error as NodeJS.ErrnoException).code ?? "")) throw error;
      return [say.entryChanged(archive, name)];
    }
    if (hash.digest("hex") !== sha256) return [say.entryChanged(archive, name)];
  }
  return [];
}
