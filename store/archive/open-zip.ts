// Opens an archive and looks at its list of files before anything of it is unpacked: names, doubles, sizes.
import type {Readable} from "node:stream";
import {openPromise, type Entry, type ZipFile} from "yauzl";
import type {Problem} from "../../engine/problem.ts";
import {mostPhotoBytes} from "../photo/sizes.ts";
import {manifestName, namePattern} from "./manifest.ts";
import * as say from "./problems.ts";

/** More files than any rack has. Source: own choice. */
const mostEntries = 1_000_000;
/** The list of files is held in memory. */
const mostManifestBytes = 200_000_000;
const mostBookBytes = 5_000_000;
/** Lines of JSON shrink to a twentieth or so, histories of small changes to less; what shrinks more was made to. Source: own choice. */
const mostShrinking = 400;

export interface OpenZip {
  readonly entries: ReadonlyMap<string, Entry>;
  stream(name: string): Promise<Readable>;
  close(): void;
}

export type Opened = {readonly zip: OpenZip; readonly problems?: undefined} | {readonly zip?: undefined; readonly problems: readonly Problem[]};

/** @param archive  the path, also for problems */
export async function openZip(archive: string): Promise<Opened> {
  let zip: ZipFile;
  try {
    zip = await openPromise(archive, {lazyEntries: true, autoClose: false, strictFileNames: true, validateEntrySizes: true});
  } catch (error) {
    return {problems: [say.unreadable(archive, reasonOf(error))]};
  }
  const entries = new Map<string, Entry>();
  const problems: Problem[] = [];
  try {
    let packed = 0;
    if (zip.entryCount > mostEntries) problems.push(say.unreadable(archive, `${zip.entryCount} files`));
    else {
      for await (const entry of zip.eachEntry()) {
        const name = entry.fileName;
        if (!namePattern.test(name) || entry.isEncrypted()) problems.push(say.strangeEntry(archive, printable(name)));
        else if (entries.has(name)) problems.push(say.entryTwice(archive, name));
        else if (isTooLarge(entry)) problems.push(say.unpacksTooLarge(archive, name));
        entries.set(name, entry);
        packed += entry.compressedSize;
        // Files that share their packed bytes with others are a way to unpack the same bytes over and over.
        if (packed > zip.fileSize) problems.push(say.unpacksTooLarge(archive, name));
        if (problems.length >= 20) break;
      }
      if (problems.length === 0 && !entries.has(manifestName)) problems.push(say.notOurs(archive, `it has no ${manifestName}`));
    }
  } catch (error) {
    const strange = /(?:absolute path|invalid relative path|invalid characters in fileName): (.*)/.exec(reasonOf(error));
    problems.push(strange ? say.strangeEntry(archive, printable(strange[1]!)) : say.unreadable(archive, reasonOf(error)));
  }
  if (problems.length > 0) {
    zip.close();
    return {problems};
  }
  return {zip: {entries, stream: (name) => zip.openReadStreamPromise(entries.get(name)!), close: () => zip.close()}};
}

function isTooLarge({fileName, compressedSize, uncompressedSize}: Entry): boolean {
  if (fileName.startsWith("photos/")) return uncompressedSize > mostPhotoBytes;
  if (fileName.startsWith("books/")) return uncompressedSize > mostBookBytes;
  if (fileName === manifestName && uncompressedSize > mostManifestBytes) return true;
  return uncompressedSize > 1_000_000 && uncompressedSize > compressedSize * mostShrinking;
}

const printable = (name: string) => name.replace(/[^\x20-\x7e]/g, "?").slice(0, 120);

export const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error)).slice(0, 200);
