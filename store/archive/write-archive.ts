// Writes everything of a rack into one zip file: data as lines of JSON, photos and books as they are. The same rack always gives the same bytes.
import {createHash, randomUUID} from "node:crypto";
import {createWriteStream} from "node:fs";
import {open, readFile, rename, rm} from "node:fs/promises";
import {join} from "node:path";
import {Readable} from "node:stream";
import {pipeline} from "node:stream/promises";
import {ZipFile} from "yazl";
import {diskFault} from "../disk/disk-fault.ts";
import {partsOf} from "../open.ts";
import {originalPath} from "../photo/photo-files.ts";
import {openDatabase, type Database} from "../sqlite/database.ts";
import {asBytes, dataLines} from "./data-lines.ts";
import {bookName, dataNames, form, formVersion, manifestName, photoName, type ArchivedFile, type Manifest} from "./manifest.ts";

export interface Archived {
  readonly manifest: Manifest;
  /** Photos that the rack knows and whose files are gone or damaged: they are not in the archive. */
  readonly missing: readonly string[];
}

/**
 * Archives a rack as it stands at this moment, while others go on writing.
 * Settings that are secret stay out.
 * @param folder  of a rack that has been opened, and so has the newest shape
 * @param file    of the archive; appears when it is whole
 * @throws StoreFault when the disk is full or closed; nothing stands at the path then
 */
export async function writeArchive(folder: string, file: string): Promise<Archived> {
  const {database, backups, photos} = partsOf(folder);
  const still = join(backups, `${randomUUID()}.part`);
  const part = `${file}.${randomUUID()}.part`;
  try {
    copyOf(database, still);
    const db = openDatabase(still);
    try {
      const {manifest, missing} = await describe(db, photos);
      await writeZip(db, photos, manifest, part);
      await rename(part, file);
      return {manifest, missing};
    } finally {
      db.close();
    }
  } catch (error) {
    await rm(part, {force: true});
    throw diskFault(error, folder);
  } finally {
    await Promise.all(["", "-wal", "-shm"].map((ending) => rm(still + ending, {force: true})));
  }
}

function copyOf(database: string, still: string): void {
  const db = openDatabase(database);
  try {
    db.run("VACUUM INTO ?", still);
  } finally {
    db.close();
  }
}

interface EditionText {
  readonly book: string;
  readonly edition: number;
  readonly yaml: string;
}

const editionsOf = (db: Database) => db.all<EditionText>("SELECT book, edition, yaml FROM edition ORDER BY book, edition");

async function describe(db: Database, photos: string): Promise<Archived> {
  const files: ArchivedFile[] = dataNames.map((name) => ({name, ...measured(asBytes(dataLines[name](db)))}));
  for (const {book, edition, yaml} of editionsOf(db)) files.push({name: bookName(book, edition), ...measured([Buffer.from(yaml)])});
  const missing: string[] = [];
  for (const {photo} of db.all<{photo: string}>("SELECT photo FROM photo ORDER BY photo")) {
    const bytes = await readFile(originalPath(photos, photo)).catch(() => null);
    if (bytes && measured([bytes]).sha256 === photo) files.push({name: photoName(photo), bytes: bytes.length, sha256: photo});
    else missing.push(photo);
  }
  const count = (table: string) => db.one<{n: number}>(`SELECT count(*) AS n FROM ${table}`)!.n;
  return {manifest: {form, version: formVersion, garments: count("garment"), steps: count("step"), sales: db.one<{n: number}>("SELECT count(*) AS n FROM sale WHERE garment IS NULL")!.n, photos: count("photo"), books: count("edition"), files}, missing};
}

function measured(pieces: Iterable<Buffer>): {bytes: number; sha256: string} {
  const hash = createHash("sha256");
  let bytes = 0;
  for (const piece of pieces) {
    hash.update(piece);
    bytes += piece.length;
  }
  return {bytes, sha256: hash.digest("hex")};
}

/** Every file is dated alike: 1980 began the time of zip files. Source: PKWARE APPNOTE.TXT, 4.4.6. */
const dated = {mtime: new Date(1980, 0, 1), mode: 0o100644, forceDosTimestamp: true};

async function writeZip(db: Database, photos: string, manifest: Manifest, part: string): Promise<void> {
  const zip = new ZipFile();
  const written = pipeline(zip.outputStream as Readable, createWriteStream(part, {flags: "wx"}));
  // A file that vanishes meanwhile is told by the zip, and would leave the stream waiting.
  zip.on("error", (error: Error) => (zip.outputStream as Readable).destroy(error));
  zip.addBuffer(Buffer.from(`${JSON.stringify(manifest)}\n`), manifestName, dated);
  for (const name of dataNames) zip.addReadStreamLazy(name, dated, (give) => give(null, Readable.from(asBytes(dataLines[name](db)), {objectMode: false})));
  for (const {book, edition, yaml} of editionsOf(db)) zip.addBuffer(Buffer.from(yaml), bookName(book, edition), dated);
  for (const {name, sha256} of manifest.files) if (name === photoName(sha256)) zip.addFile(originalPath(photos, sha256), name, {...dated, compress: false});
  zip.end();
  await written;
  const file = await open(part, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}
