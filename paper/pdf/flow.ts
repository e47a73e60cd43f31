// Sets text down a page: paragraphs, headings and lists one below the other, on a new page when one is full.
import {linesOf} from "../face/runs.ts";
import type {Drawing} from "../draw/svg-page.ts";
import {drawSvg} from "./draw-svg.ts";
import type {Pdf, Structure, TextLook} from "./open-pdf.ts";

export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface BlockLook extends TextLook {
  /** From line to line, in sizes. */
  readonly leading?: number;
  /** Room below, points. */
  readonly after?: number;
  /** From the left margin. */
  readonly indent?: number;
  readonly width?: number;
}

export interface Flow {
  readonly pdf: Pdf;
  readonly left: number;
  readonly width: number;
  /** Where the next thing goes. */
  y: number;
  readonly bottom: number;
  /** Begins a new page unless so much fits. */
  need(height: number): void;
  /** Room that a text takes. */
  heightOf(text: string, look: BlockLook): number;
  block(parent: Structure, type: string, text: string, look: BlockLook): void;
  figure(parent: Structure, drawing: Drawing, options?: {readonly x?: number; readonly after?: number}): void;
}

/** @param begin  draws what repeats on each page, and says where text begins on it */
export function makeFlow(pdf: Pdf, margins: Margins, begin: (page: number) => number): Flow {
  const {page} = pdf;
  let pages = 0;
  const flow: Flow = {
    pdf,
    left: margins.left,
    width: page.width - margins.left - margins.right,
    y: 0,
    bottom: page.height - margins.bottom,
    need(height) {
      if (pages === 0 || flow.y + height > flow.bottom) turn();
    },
    heightOf: (text, {face = "sans", size, leading = 1.32, after = 0, width = flow.width, indent = 0}) => linesOf(face, text, size, width - indent).length * size * leading + after,
    block(parent, type, text, look) {
      const {face = "sans", size, leading = 1.32, after = 0, width = flow.width, indent = 0} = look;
      const lines = linesOf(face, text, size, width - indent);
      let done = 0;
      // A paragraph that goes on over the page is one element for each page: what repeats on a page must not stand inside it.
      while (done < lines.length) {
        flow.need(Math.min(2, lines.length - done) * size * leading);
        const room = Math.max(1, Math.floor((flow.bottom - flow.y) / (size * leading)));
        const here = lines.slice(done, done + room);
        pdf.tag(parent, type, () => here.forEach((line, i) => pdf.words(line, flow.left + indent, flow.y + size * (0.98 + i * leading), look)));
        flow.y += here.length * size * leading;
        done += here.length;
      }
      flow.y += after;
    },
    figure(parent, drawing, {x = flow.left, after = 0} = {}) {
      flow.need(drawing.height);
      pdf.tag(parent, "Figure", () => drawSvg(pdf, drawing.inside, x, flow.y, drawing.scale), drawing.label);
      flow.y += drawing.height + after;
    },
  };
  const turn = () => {
    pdf.addPage();
    flow.y = begin(pages++);
  };
  return flow;
}
