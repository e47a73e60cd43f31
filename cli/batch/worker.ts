// A worker of a batch: takes shares of records, gives them back dated, in the order in which they came.
import {parentPort, workerData} from "node:worker_threads";
import type {Records} from "../../commands/batch/split.ts";
import {makeExaminer, type Book, type MonthIndex} from "../../engine/index.ts";
import {dateRecords, type Task} from "./date-records.ts";

export interface WorkerStart {
  readonly task: Task;
  readonly books: readonly Book[];
  readonly today: MonthIndex;
  readonly since: MonthIndex;
}

const {task, books, today, since} = workerData as WorkerStart;
const examiner = makeExaminer(books, {today, since});
parentPort!.on("message", (records: Records) => parentPort!.postMessage(dateRecords(records, task, examiner)));
