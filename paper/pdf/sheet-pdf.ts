// A dating sheet as pages of a PDF.
import {qrCode} from "../draw/codes.ts";
import {inks, stitches, type Drawing} from "../draw/svg-page.ts";
import {yearRibbon} from "../draw/year-ribbon.ts";
import {linesOf, unprintable} from "../face/runs.ts";
import type {Sheet} from "../sheet/sheet.ts";
import {drawSvg} from "./draw-svg.ts";
import {makeFlow, type Flow} from "./flow.ts";
import type {Pdf, Structure} from "./open-pdf.ts";
import {coverRoom, drawCover, drawPhotos, type PhotoBytes} from "./photos.ts";
import {entryHeight, writeEntries} from "./entries.ts";
import {writeEvidence} from "./evidence.ts";

const margins = {left: 42, right: 42, top: 30, bottom: 44};
const codeSide = 82;

/** Draws a sheet on pages of its own. */
export function drawSheet(pdf: Pdf, sheet: Sheet, photos: PhotoBytes): void {
  const part = pdf.part(pdf.root, "Sect");
  const flow = makeFlow(pdf, margins, (page) => head(pdf, sheet, page));
  flow.need(1);
  title(flow, part, sheet, photos);
  flow.figure(part, yearRibbon(sheet.ribbon.months, sheet.ribbon.threads, flow.width, sheet.ribbon.label), {after: 12});
  if (sheet.odd.length > 0) oddBox(flow, part, sheet.odd);
  if (sheet.evidence.length > 0) writeEvidence(flow, part, sheet.evidence);
  twoColumns(flow, part, sheet);
  if (sheet.worth !== null) {
    heading(flow, part, "Worth, as an estimate");
    flow.block(part, "P", sheet.worth, {size: 9, after: 8});
  }
  drawPhotos(flow, part, sheet.photos.slice(1), photos);
  foot(flow, part, sheet);
  part.end();
  footers(pdf, sheet);
}

function head(pdf: Pdf, {owner, number, on}: Sheet, page: number): number {
  const {width} = pdf.page;
  pdf.aside(() => {
    pdf.words(owner[0] ?? "", margins.left, 36, {size: 8.5, face: "sans bold"});
    if (page === 0 && owner.length > 1) pdf.words(owner.slice(1).join(", "), margins.left, 47, {size: 7.5, fill: inks.quiet});
    pdf.words(`Dating sheet ${number}`, width - margins.right, 36, {size: 8.5, anchor: "end", face: "sans bold"});
    if (page === 0) pdf.words(on, width - margins.right, 47, {size: 7.5, anchor: "end", fill: inks.quiet});
    drawSvg(pdf, stitches(`M${margins.left} 55H${width - margins.right}`), 0, 0);
  });
  return 68;
}

function title(flow: Flow, part: Structure, {garment, verdict, photos: shown}: Sheet, photos: PhotoBytes): void {
  const cover = shown[0];
  const picture = cover && photos.get(cover.photo) ? cover : undefined;
  const width = picture ? flow.width - coverRoom.width - 16 : flow.width;
  const top = flow.y;
  const size = verdict.words.length > 24 ? 19 : verdict.words.length > 15 ? 25 : 32;
  flow.block(part, "H1", `${garment.number}${garment.title === "" ? "" : ` · ${garment.title}`}`, {face: "sans bold", size: 12.5, width, after: 1});
  if (garment.about !== "") flow.block(part, "P", garment.about, {size: 8.5, width, fill: inks.quiet});
  flow.y += 9;
  flow.block(part, "P", verdict.lead, {size: 9.5, width, fill: inks.quiet});
  flow.block(part, "H2", verdict.words, {face: "serif", size, width, leading: 1.14, after: 3});
  if (verdict.odds !== "") flow.block(part, "P", verdict.odds, {face: "sans bold", size: 10.5, width, after: 3});
  for (const line of verdict.bounds) flow.block(part, "P", line, {size: 9, width});
  if (picture) flow.y = Math.max(flow.y, drawCover(flow, part, picture, photos, top));
  flow.y += 12;
}

export const heading = (flow: Flow, part: Structure, text: string): void => {
  flow.need(34);
  flow.block(part, "H2", text, {face: "sans bold", size: 10.5, after: 3});
};

function oddBox(flow: Flow, part: Structure, odd: readonly string[]): void {
  const text = odd.join(" ");
  const look = {size: 9, width: flow.width - 10, indent: 10};
  const head = odd.length === 1 ? "What does not fit" : `${odd.length} things that do not fit`;
  const height = flow.heightOf(text, look) + 22;
  flow.need(height);
  flow.pdf.aside(() => drawSvg(flow.pdf, stitches(`M${flow.left + 2} ${flow.y + 1}V${flow.y + height - 6}`, 1.6), 0, 0));
  flow.block(part, "H2", head, {face: "sans bold", size: 9.5, indent: 10, fill: inks["stitch words"]});
  flow.block(part, "P", text, {...look, after: 11});
}

/** Measurements left, state right; one alone takes the whole width. */
function twoColumns(flow: Flow, part: Structure, {measures, state}: Sheet): void {
  const columns = [{head: "Measurements", entries: measures}, {head: "State", entries: state}].filter(({entries}) => entries.length > 0);
  if (columns.length === 0) return;
  const width = columns.length === 2 ? (flow.width - 22) / 2 : flow.width;
  const tallest = Math.max(...columns.map(({entries}) => entries.reduce((sum, entry) => sum + entryHeight(entry, width), 18)));
  flow.need(Math.min(tallest, flow.bottom - 120));
  const top = flow.y;
  const ends = columns.map(({head, entries}, i) => {
    flow.y = top;
    return writeEntries(flow, part, head, entries, flow.left + i * (width + 22), width);
  });
  flow.y = Math.max(...ends) + 10;
}

/** The code, and the words that hold for every sheet. */
function foot(flow: Flow, part: Structure, sheet: Sheet): void {
  const {estimate, cautions, books, code, number} = sheet;
  const width = flow.width - codeSide - 16;
  const look = {size: 7.6, width, indent: 0, fill: inks.quiet, after: 2.5};
  const texts = [estimate, ...cautions, books, ...lostWords(sheet), code.how];
  const height = Math.max(codeSide + 22, texts.reduce((sum, text) => sum + linesOf("sans", text, look.size, width).length * look.size * 1.32 + look.after, 8));
  flow.need(height + 8);
  flow.y = Math.max(flow.y, flow.bottom - height);
  flow.pdf.aside(() => drawSvg(flow.pdf, stitches(`M${flow.left} ${flow.y}H${flow.left + flow.width}`, 0.8), 0, 0));
  flow.y += 8;
  const top = flow.y;
  for (const text of texts) flow.block(part, "P", text, look);
  const x = flow.left + flow.width - codeSide;
  const qr: Drawing = qrCode(code.text, codeSide, `QR code with the fingerprint of sheet ${number}: ${code.short}`);
  flow.pdf.tag(part, "Figure", () => drawSvg(flow.pdf, qr.inside, x, top - 4), qr.label);
  flow.pdf.tag(part, "P", () => flow.pdf.words(code.short, x + codeSide / 2, top + codeSide + 4, {size: 7.4, face: "sans bold", anchor: "middle"}));
}

/** That signs could not be printed is told on the sheet itself, so that nobody takes a question mark for the owner's. */
function lostWords({owner, garment, measures, state, photos}: Sheet): string[] {
  const entries = [...measures, ...state].flatMap(({name, text}) => [name, text]);
  const lost = unprintable([...owner, garment.number, garment.title, garment.about, ...entries, ...photos.map(({caption}) => caption)].join(" "));
  return lost === 0 ? [] : [`${lost === 1 ? "One sign on this sheet has" : `${lost} signs on this sheet have`} no letter in its typefaces and ${lost === 1 ? "stands" : "stand"} as a question mark.`];
}

/** Only now it is known how many pages there are; then they are written out, so that many sheets take no more memory than one. */
function footers(pdf: Pdf, {number}: Sheet): void {
  const {start, count} = pdf.doc.bufferedPageRange();
  for (let page = 0; page < count; page++) {
    pdf.doc.switchToPage(start + page);
    pdf.aside(() => {
      pdf.words("An estimate, no certified appraisal and no guarantee of authenticity.", margins.left, pdf.page.height - 24, {size: 7, fill: inks.quiet});
      pdf.words(`Sheet ${number} · page ${page + 1} of ${count}`, pdf.page.width - margins.right, pdf.page.height - 24, {size: 7, fill: inks.quiet, anchor: "end"});
    });
  }
  pdf.doc.flushPages();
}
