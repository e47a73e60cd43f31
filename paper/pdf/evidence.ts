// The marks on a sheet: what was seen, its weight in stitches, and on whose authority.
import {inks} from "../draw/svg-page.ts";
import {element} from "../../rulebooks/svg.ts";
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
    flow.need(flow.heightOf(head, {size: 9, face: "sans bold", width}) + 12);
    const top = flow.y;
    flow.block(item, "LBody", head, {size: 9, face: "sans bold", width, ...(odd ? {fill: inks["stitch words"]} : {})});
    const [x, y] = [flow.left + flow.width - weightRoom + 4, top + 6];
    pdf.tag(item, "Figure", () => drawSvg(pdf, stitchesOf(weight), x, y), `weight ${weight} of 5`);
    for (const line of lines) flow.block(item, "P", line, {size: 8, width, fill: inks.quiet});
    item.end();
    flow.y += 4.5;
  }
  list.end();
  flow.y += 6;
}

/** One to five stitches; those that are missing stand as dots, so that none is a sign, too. */
function stitchesOf(weight: number): string {
  return [0, 1, 2, 3, 4].map((i) => (i < weight ? element("path", {d: `M${i * 12} 0h8.5`, stroke: inks.stitch, "stroke-width": 2.2, "stroke-linecap": "round"}) : element("circle", {cx: i * 12 + 4, cy: 0, r: 0.7, fill: inks.quiet}))).join("");
}
