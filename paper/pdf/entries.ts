// A column of names with what belongs to them: measurements, state.
import {linesOf} from "../face/runs.ts";
import {inks} from "../draw/svg-page.ts";
import type {Entry} from "../sheet/sheet.ts";
import type {Flow} from "./flow.ts";
import type {Structure} from "./open-pdf.ts";

const size = 8.8;
const line = size * 1.36;
const nameShare = 0.4;

export const entryHeight = ({name, text}: Entry, width: number): number =>
  Math.max(linesOf("sans", name, size, width * nameShare - 8).length, linesOf("sans", text, size, width * (1 - nameShare)).length) * line + 1.5;

/** @returns where the column ends */
export function writeEntries(flow: Flow, part: Structure, head: string, entries: readonly Entry[], x: number, width: number): number {
  const {pdf} = flow;
  pdf.tag(part, "H2", () => pdf.words(head, x, flow.y + 10, {face: "sans bold", size: 10.5}));
  flow.y += 18;
  const list = pdf.part(part, "L");
  for (const entry of entries) {
    const height = entryHeight(entry, width);
    flow.need(height);
    const item = pdf.part(list, "LI");
    const write = (type: string, text: string, at: number, room: number, fill?: string) =>
      pdf.tag(item, type, () => linesOf("sans", text, size, room).forEach((words, i) => pdf.words(words, at, flow.y + size + i * line, {size, ...(fill ? {fill} : {})})));
    if (entry.name !== "") write("Lbl", entry.name, x, width * nameShare - 8, inks.quiet);
    write("LBody", entry.text, x + width * nameShare, width * (1 - nameShare));
    item.end();
    flow.y += height;
  }
  list.end();
  return flow.y;
}
