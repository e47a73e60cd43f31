// The whole rack as one file over the wire: out to be kept elsewhere, and in to an empty rack.
import {randomUUID} from "node:crypto";
import {createReadStream, createWriteStream} from "node:fs";
import {rm, stat} from "node:fs/promises";
import {join} from "node:path";
import {Readable, Transform} from "node:stream";
import {pipeline} from "node:stream/promises";
import {z} from "zod";
import type {Problem} from "../engine/index.ts";
import {diskFault} from "../store/disk/disk-fault.ts";
import {StoreFault} from "../store/fault.ts";
import {partsOf} from "../store/open.ts";
import type {ArchiveDone, ArchiveTask} from "./archive-worker.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {mediaOf} from "./read-body.ts";
import type {Route} from "./route.ts";
import {startWorker} from "./start-worker.ts";

const medias = ["application/zip", "application/octet-stream", "application/x-zip-compressed"];
/** More than the photos of any rack. Source: own choice. */
const mostBytes = 64_000_000_000;

const count = z.number().int();
const restoredSchema = z.strictObject({garments: count, steps: count, photos: count, books: count});

/** @param onRestored  called when the rack holds what the archive held */
export function archiveRoutes(folder: string, onRestored: () => Promise<void>): Route[] {
  const waiting = () => join(partsOf(folder).backups, `${randomUUID()}.part`);
  return [
    {
      name: "archive.write",
      summary: "hand out everything in one file: garments with their history, photos and own rule books",
      method: "get",
      path: "/api/archive",
      shapes: {path: {}, query: {}, body: null, answer: {status: 200, mime: "application/zip", schema: null}, refusals: []},
      async answer() {
        const file = waiting();
        const {problems} = await inWorker({work: "write", folder, file});
        if (problems) throw new StoreFault(problems);
        const {size} = await stat(file);
        const stream = createReadStream(file).on("close", () => void rm(file, {force: true}));
        const headers = {"content-type": "application/zip", "content-length": String(size), "content-disposition": `attachment; filename="rack-${new Date().toISOString().slice(0, 10)}.zip"`, "cache-control": "no-store"};
        return new Response(Readable.toWeb(stream) as ReadableStream<Uint8Array>, {headers});
      },
    },
    {
      name: "archive.restore",
      summary: "restore an archive to an empty rack, as a whole or not at all",
      method: "post",
      path: "/api/archive",
      shapes: {path: {}, query: {}, body: medias, answer: {status: 200, mime: "application/json", schema: restoredSchema}, refusals: [409, 413, 415, 422]},
      async answer(context) {
        const request = context.req.raw;
        if (!medias.includes(mediaOf(request))) throw new Refused(415, [say.wrongMedia(mediaOf(request), medias)]);
        const file = waiting();
        try {
          await receive(request, file, folder);
          const done = await inWorker({work: "restore", folder, file});
          if (done.problems) throw refusal(done, file);
          await onRestored();
          return context.json(done.counts);
        } finally {
          await rm(file, {force: true});
        }
      },
    },
  ];
}

/** Writes the body to a file as it comes. */
async function receive(request: Request, file: string, folder: string): Promise<void> {
  const told = Number(request.headers.get("content-length") ?? 0);
  if (told > mostBytes) throw new Refused(413, [say.tooLarge(mostBytes)]);
  let size = 0;
  const counted = new Transform({
    transform(piece: Buffer, _encoding, done) {
      size += piece.length;
      done(size > mostBytes ? new Refused(413, [say.tooLarge(mostBytes)]) : null, piece);
    },
  });
  try {
    await pipeline(request.body ?? Readable.from([]), counted, createWriteStream(file, {flags: "wx"}));
  } catch (error) {
    throw diskFault(error, folder);
  }
}

const statuses: Readonly<Record<string, number>> = {"archive/rack-not-empty": 409, "archive/other-book": 409, "archive/no-room": 507};

/** Problems speak of the archive by its path on this machine; those who sent it know it as the archive. */
function refusal({problems, fault}: ArchiveDone & {readonly problems: readonly Problem[]}, file: string): Error {
  const told = problems.map((problem) => ({...problem, at: problem.at.replace(file, "the archive")}));
  return fault ? new StoreFault(told) : new Refused(statuses[told[0]?.code ?? ""] ?? 422, told);
}

function inWorker(task: ArchiveTask): Promise<ArchiveDone> {
  return new Promise((resolve, reject) => {
    const worker = startWorker(new URL("./archive-worker.ts", import.meta.url), task);
    worker.once("message", (done: ArchiveDone) => resolve(done));
    worker.once("error", reject);
    worker.once("exit", () => reject(new Error("the worker ended before it answered")));
  });
}
