// The worker that examines garments while the server goes on answering.
import {parentPort, workerData} from "node:worker_threads";
import {examineJson, type ExamineInput} from "../commands/rack/examine-json.ts";
import {dateAll} from "../commands/rack/rack.ts";
import {makeWorld} from "../commands/world.ts";
import {dateOdds} from "../commands/worth/date-odds.ts";
import type {Book, Garment, MonthIndex} from "../engine/index.ts";

export interface ExamineStart {
  readonly books: readonly Book[];
  readonly today: MonthIndex;
}

/** Answered in the order in which tasks came: with datings, with a finding, with the odds of a date, or with problems. */
export type ExamineTask = {readonly garments: readonly Garment[]; readonly now: string} | {readonly input: ExamineInput} | {readonly weigh: Garment; readonly looks: boolean};

const {books, today} = workerData as ExamineStart;
const world = makeWorld(books, today);
parentPort!.on("message", (task: ExamineTask) => parentPort!.postMessage(answer(task)));

function answer(task: ExamineTask): unknown {
  if ("weigh" in task) return dateOdds(task.weigh, world, task.looks);
  return "input" in task ? examineJson(task.input, world) : dateAll(task.garments, world, task.now);
}
