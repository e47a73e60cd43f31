// The worker that dates garments while the server goes on answering.
import {parentPort, workerData} from "node:worker_threads";
import {dateAll} from "../commands/rack/rack.ts";
import {makeWorld} from "../commands/world.ts";
import type {Book, Garment, MonthIndex} from "../engine/index.ts";

export interface DateStart {
  readonly books: readonly Book[];
  readonly today: MonthIndex;
}

/** Answered with the datings, in the order in which the tasks came. */
export interface DateTask {
  readonly garments: readonly Garment[];
  readonly now: string;
}

const {books, today} = workerData as DateStart;
const world = makeWorld(books, today);
parentPort!.on("message", ({garments, now}: DateTask) => parentPort!.postMessage(dateAll(garments, world, now)));
