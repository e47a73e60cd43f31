// Sheets of hang tags as a PDF: tags edge to edge, marks to cut along at the edges of the page and where corners meet.
import type {TagCode} from "../../commands/paper/choices.ts";
import {tagsOn, type TagFormat} from "../../commands/paper/tag-format.ts";
import {drawTag} from "../tag/draw-tag.ts";
import type {Tag} from "../tag/tag.ts";
import {inks, mm, stroke} from "../draw/svg-page.ts";
import {drawSvg} from "./draw-svg.ts";
import type {Pdf} from "./open-pdf.ts";

export interface TagWish {
  readonly format: TagFormat;
  readonly code: TagCode;
  /** In millimetres. */
  readonly page: {readonly width: number; readonly height: number};
}

export function drawTags(pdf: Pdf, tags: readonly Tag[], {format, code, page}: TagWish): void {
  const {columns, rows, left, top} = tagsOn(format, page);
  const each = columns * rows;
  for (let from = 0; from < tags.length; from += each) {
    pdf.addPage();
    pdf.aside(() => drawSvg(pdf, cutMarks(columns, rows, left, top, format), 0, 0));
    const part = pdf.part(pdf.root, "Sect");
    tags.slice(from, from + each).forEach((tag, i) => {
      const drawn = drawTag(tag, format, code);
      const [x, y] = [mm(left + (i % columns) * format.width), mm(top + Math.floor(i / columns) * format.height)];
      pdf.tag(part, "Div", () => drawSvg(pdf, drawn.inside, x, y), drawn.label);
    });
    part.end();
  }
}

/** Short lines beyond the block for each cut, and small crosses where four tags meet. */
function cutMarks(columns: number, rows: number, left: number, top: number, {width, height}: TagFormat): string {
  const [right, bottom] = [left + columns * width, top + rows * height];
  const marks: string[] = [];
  for (let i = 0; i <= columns; i++) marks.push(`M${mm(left + i * width)} ${mm(top - 1.5)}V${mm(top - 6)}M${mm(left + i * width)} ${mm(bottom + 1.5)}V${mm(bottom + 6)}`);
  for (let i = 0; i <= rows; i++) marks.push(`M${mm(left - 1.5)} ${mm(top + i * height)}H${mm(left - 6)}M${mm(right + 1.5)} ${mm(top + i * height)}H${mm(right + 6)}`);
  for (let i = 0; i <= columns; i++) for (let k = 0; k <= rows; k++) marks.push(`M${mm(left + i * width) - 2} ${mm(top + k * height)}h4M${mm(left + i * width)} ${mm(top + k * height) - 2}v4`);
  return stroke(marks.join(""), 0.35, inks.quiet);
}
