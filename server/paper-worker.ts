// The worker that draws papers while the server goes on answering.
import {parentPort} from "node:worker_threads";
import {printChart, printTags, sheetPress, type SheetPress} from "../paper/print.ts";
import type {PressAnswer, PressTask} from "./paper-press.ts";

const open = new Map<number, SheetPress>();

async function work(task: PressTask): Promise<Uint8Array | null> {
  switch (task.work) {
    case "begin":
      open.set(task.job, sheetPress(task.title, task.size, task.options));
      return null;
    case "sheet":
      open.get(task.job)!.add(task.sheet, task.photos);
      return null;
    case "end": {
      const press = open.get(task.job)!;
      open.delete(task.job);
      return press.end();
    }
    case "drop":
      open.delete(task.job);
      return null;
    case "tags":
      return printTags(task.tags, task.wish, task.options);
    case "chart":
      return printChart(task.book, task.today, task.size, task.options);
  }
}

parentPort!.on("message", ({id, task}: {readonly id: number; readonly task: PressTask}) => {
  const answer = (given: PressAnswer) => parentPort!.postMessage(given);
  work(task).then((bytes) => answer({id, bytes}), (error: Error) => answer({id, bytes: null, fault: error.message}));
});
