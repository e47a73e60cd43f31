// The worker that writes or restores an archive: minutes of reading and hashing that must not keep requests waiting.
import {parentPort, workerData} from "node:worker_threads";
import type {Problem} from "../engine/index.ts";
import {restoreArchive} from "../store/archive/restore-archive.ts";
import {writeArchive} from "../store/archive/write-archive.ts";
import {StoreFault} from "../store/fault.ts";

export interface ArchiveTask {
  readonly work: "write" | "restore";
  readonly folder: string;
  /** Path of the archive. */
  readonly file: string;
}

export interface ArchiveCounts {
  readonly garments: number;
  readonly steps: number;
  readonly photos: number;
  readonly books: number;
}

/** `fault`: the store could not do it; else the problems are those of the archive. */
export type ArchiveDone = {readonly counts: ArchiveCounts; readonly problems?: undefined} | {readonly counts?: undefined; readonly problems: readonly Problem[]; readonly fault: boolean};

const {work, folder, file} = workerData as ArchiveTask;
parentPort!.postMessage(await (work === "write" ? write() : restore()).catch(faulty));

async function write(): Promise<ArchiveDone> {
  return countsOf((await writeArchive(folder, file)).manifest);
}

async function restore(): Promise<ArchiveDone> {
  const {restored, problems} = await restoreArchive(file, folder);
  return problems ? {problems, fault: false} : countsOf(restored);
}

function countsOf({garments, steps, photos, books}: ArchiveCounts): ArchiveDone {
  return {counts: {garments, steps, photos, books}};
}

/** A class does not come through to the other thread; its problems do. */
function faulty(error: unknown): ArchiveDone {
  if (error instanceof StoreFault) return {problems: error.problems, fault: true};
  throw error;
}
