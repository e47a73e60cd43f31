// Puts a file in its place as a whole or not at all: written beside, forced to the disk, then renamed.
import {randomUUID} from "node:crypto";
import {mkdir, open, rename, rm} from "node:fs/promises";
import {dirname, join} from "node:path";
import {diskFault} from "./disk-fault.ts";

/** Writes bytes and forces them to the disk; a seam for tests in which the disk is full. */
export type WriteBytes = (path: string, bytes: Uint8Array) => Promise<void>;

export const writeThrough: WriteBytes = async (path, bytes) => {
  const file = await open(path, "wx");
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
};

/**
 * @param waiting  a folder on the same disk for the file while it is not whole
 * @throws StoreFault when the disk is full or closed; nothing stands at the path then
 */
export async function keepFile(path: string, bytes: Uint8Array, waiting: string, write: WriteBytes = writeThrough): Promise<void> {
  const part = join(waiting, randomUUID());
  try {
    await mkdir(waiting, {recursive: true});
    await mkdir(dirname(path), {recursive: true});
    await write(part, bytes);
    await rename(part, path);
    await syncFolder(dirname(path));
  } catch (error) {
    await rm(part, {force: true});
    throw diskFault(error, dirname(waiting));
  }
}

/** A rename is on the disk once the folder is; Windows knows no such thing. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === "win32") return;
  const opened = await open(folder, "r");
  try {
    await opened.sync();
  } finally {
    await opened.close();
  }
}
