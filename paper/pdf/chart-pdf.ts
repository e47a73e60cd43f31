// A wall chart as a PDF: vectors and type that stay sharp at any size.
import {inks, mm, stitches} from "../draw/svg-page.ts";
import type {WallChart} from "../chart/compose.ts";
import {layOut} from "../chart/lay-out.ts";
import {linesOf} from "../face/runs.ts";
import {drawSvg} from "./draw-svg.ts";
import type {Pdf} from "./open-pdf.ts";

const margin = mm(14);

/** Draws the chart on as many pages as it needs; one as long as its type stays readable. */
export function drawChart(pdf: Pdf, {title, about, blocks}: WallChart): void {
  const {width, height} = pdf.page;
  const titleSize = Math.min(width / 22, 46);
  const inner = width - 2 * margin;
  const aboutSize = Math.max(9, titleSize * 0.3);
  const titles = linesOf("serif", title, titleSize, inner);
  const abouts = linesOf("sans", about, aboutSize, inner);
  const top = margin + titles.length * titleSize * 1.1 + abouts.length * aboutSize * 1.35 + 22;
  const {scale, pages, placed} = layOut(blocks, {width: inner, height: height - top - margin - 12, column: 310});
  for (let page = 0; page < pages; page++) {
    pdf.addPage();
    const part = pdf.part(pdf.root, "Sect");
    pdf.tag(part, page === 0 ? "H1" : "P", () => titles.forEach((line, i) => pdf.words(line, margin, margin + titleSize * (0.85 + i * 1.1), {face: "serif", size: titleSize})));
    const under = margin + titles.length * titleSize * 1.1;
    pdf.tag(part, "P", () => abouts.forEach((line, i) => pdf.words(line, margin, under + aboutSize * (1 + i * 1.35), {size: aboutSize, fill: inks.quiet})));
    pdf.aside(() => drawSvg(pdf, stitches(`M${margin} ${top - 9}H${width - margin}`, 1.4), 0, 0));
    for (const {block, x, y} of placed.filter((one) => one.page === page)) pdf.tag(part, block.kind, () => drawSvg(pdf, block.markup, margin + x, top + y, scale), block.kind === "Figure" ? block.says : undefined);
    part.end();
    pdf.aside(() => {
      pdf.words("Estimates from the sources that the book names; no guarantee of authenticity.", margin, height - margin + 12, {size: 7.5, fill: inks.quiet});
      if (pages > 1) pdf.words(`Sheet ${page + 1} of ${pages}`, width - margin, height - margin + 12, {size: 7.5, fill: inks.quiet, anchor: "end"});
    });
  }
}
