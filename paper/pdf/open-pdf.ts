// A PDF document for papers: PDF/A-2a (ISO 19005-2) with its structure tagged, its language and title told, and every typeface embedded.
import PDFDocument from "pdfkit";
import {runsOf} from "../face/runs.ts";
import type {Cut, Face} from "../face/faces.ts";
import {inks} from "../draw/svg-page.ts";

export interface PageSize {
  /** Points. */
  readonly width: number;
  readonly height: number;
}

export interface PdfOptions {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  /** Of making; the same input makes the same bytes. */
  readonly on: Date;
  readonly page: PageSize;
  /** Left out in tests that look into the streams. */
  readonly compress?: boolean;
}

export interface TextLook {
  readonly face?: Face;
  readonly size: number;
  readonly fill?: string;
  readonly anchor?: "start" | "middle" | "end";
}

export type Structure = PDFKit.PDFStructureElement;

export interface Pdf {
  readonly doc: PDFKit.PDFDocument;
  readonly page: PageSize;
  /** The element that everything of the document stands in. */
  readonly root: Structure;
  addPage(): void;
  /** Adds something with a meaning: a heading, a paragraph, a figure with its words. */
  tag(parent: Structure, type: string, draw: () => void, alt?: string): void;
  /** A part that others are added to; end it when it is complete. */
  part(parent: Structure, type: string): Structure;
  /** Decoration and what repeats on each page. */
  aside(draw: () => void): void;
  /** Words on a baseline, in as many typefaces as they need. */
  words(text: string, x: number, baseline: number, look: TextLook): void;
  end(): Promise<Uint8Array>;
}

export function openPdf({title, subject, author, on, page, compress = true}: PdfOptions): Pdf {
  const doc = new PDFDocument({
    autoFirstPage: false, compress, pdfVersion: "1.7", subset: "PDF/A-2a" as "PDF/A-2", tagged: true, lang: "en", displayTitle: true, font: null as unknown as string, bufferPages: true,
    info: {Title: title, Subject: subject, Author: author, Creator: "ticking", Producer: "ticking, pdfkit", CreationDate: on, ModDate: on},
  });
  const pieces: Buffer[] = [];
  doc.on("data", (piece: Buffer) => pieces.push(piece));
  const ended = new Promise<Uint8Array>((resolve) => doc.on("end", () => resolve(Buffer.concat(pieces))));
  const used = new Set<Cut>();
  const root = doc.struct("Document");
  doc.addStructure(root);
  const setFont = (cut: Cut, size: number) => {
    if (!used.has(cut)) doc.registerFont(cut.id, cut.bytes as never);
    used.add(cut);
    doc.font(cut.id).fontSize(size);
  };
  return {
    doc,
    page,
    root,
    addPage: () => void doc.addPage({size: [page.width, page.height], margin: 0}),
    tag(parent, type, draw, alt) {
      const one = doc.struct(type, alt === undefined ? {} : {alt}, draw);
      parent.add(one);
      one.end();
    },
    part(parent, type) {
      const one = doc.struct(type);
      parent.add(one);
      return one;
    },
    aside(draw) {
      doc.markContent("Artifact", {type: "Layout"});
      draw();
      doc.endMarkedContent();
    },
    words(text, x, baseline, {face = "sans", size, fill = inks.ink, anchor = "start"}) {
      const runs = runsOf(face, text);
      // With its kerning, as it will stand there; one run that begins at x needs no measure.
      const widths = runs.length === 1 && anchor === "start" ? [0] : runs.map(({cut, text: run}) => (setFont(cut, size), doc.widthOfString(run)));
      let at = anchor === "start" ? x : x - widths.reduce((sum, width) => sum + width, 0) / (anchor === "middle" ? 2 : 1);
      runs.forEach(({cut, text: run}, i) => {
        setFont(cut, size);
        doc.fillColor(fill).text(run, at, baseline, {lineBreak: false, baseline: "alphabetic"});
        at += widths[i]!;
      });
    },
    async end() {
      root.end();
      doc.end();
      return ended;
    },
  };
}
