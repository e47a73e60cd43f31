// The marks on a sheet: what was seen, its weight in stitches, and on whose authority.
import {inks} from "../draw/svg-page.ts";
import {weightStitches} from "../draw/weight.ts";
import type {Evidence} from "../sheet/sheet.ts";
import {drawSvg} from "./draw-svg.ts";
import type {Flow} from "./flow.ts";
import type {Structure} from "./open-pdf.ts";

const weightRoom = 62;

export function writeEvidence(flow: Flow, part: Structure, evidence: readonly Evidence[]): void {
  const {pdf} = flow;
  flow.need(60);
  flow.block(part, "H2", "What the date rests on", {face: "sans bold", size: 10.5});
  flow.block(part, "P", "The more stitches, the more a mark tells.", {size: 7.6, fill: inks.quiet, after: 3});
  const list = pdf.part(part, "L");
  for (const {name, seen, weight, note, odd, lines} of evidence) {
    const item = pdf.part(list, "LI");
    const width = flow.width - weightRoom;
    const head = `${name}${seen === null ? "" : `: ${seen}`}${note === null ? "" : ` (${note})`}`;
    // Its name never stands alone at the foot of a page.
    flow.need(flow.heightOf(head, {size: 9, face: "sans bold", width}) + Math.min(2, lines.length) * 22);
    const top = flow.y;
    flow.block(item, "LBody", head, {size: 9, face: "sans bold", width, ...(odd ? {fill: inks["stitch words"]} : {})});
    const drawn = weightStitches(weight);
    pdf.tag(item, "Figure", () => drawSvg(pdf, drawn.inside, flow.left + flow.width - drawn.width, top + 2), drawn.label);
    for (const line of lines) flow.block(item, "P", line, {size: 8, fill: inks.quiet});
    item.end();
    flow.y += 4.5;
  }
  list.end();
  flow.y += 6;
}
