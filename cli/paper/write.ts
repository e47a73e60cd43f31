// Writes a paper to a file, or says why it cannot be written.
import {mkdirSync, writeFileSync} from "node:fs";
import {NeedsMending} from "../ending.ts";
import {notWritten} from "../problems.ts";

export function writePaper(file: string, bytes: Uint8Array | string): void {
  tried(file, () => writeFileSync(file, bytes));
}

export function makeFolder(folder: string): void {
  tried(folder, () => mkdirSync(folder, {recursive: true}));
}

function tried(path: string, write: () => void): void {
  try {
    write();
  } catch (error) {
    throw new NeedsMending([notWritten(path, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  }
}

/** A number as part of the name of a file. */
export const fileName = (number: string): string => number.replace(/[^\p{L}\p{N}._-]+/gu, "-").replace(/^[.-]+/, "").slice(0, 60) || "garment";
