// Photos on a sheet: the first one beside the verdict, the others in a row.
import {inks} from "../draw/svg-page.ts";
import {linesOf} from "../face/runs.ts";
import type {SheetPhoto} from "../sheet/sheet.ts";
import type {Flow} from "./flow.ts";
import type {Pdf, Structure} from "./open-pdf.ts";

/** JPEG bytes by the hash of the original; those that went missing are left out. */
export type PhotoBytes = ReadonlyMap<string, Uint8Array>;

export const coverRoom = {width: 176, height: 168};
const rowHeight = 104;
const gap = 9;

interface Opened {
  readonly width: number;
  readonly height: number;
}

type Image = Opened & {readonly shown: unknown};

const opened = new WeakMap<PDFKit.PDFDocument, Map<Uint8Array, Image>>();

/** A photo that several sheets show is put into the document once. */
function openImage(pdf: Pdf, bytes: Uint8Array): Image {
  const known = opened.get(pdf.doc) ?? new Map<Uint8Array, Image>();
  opened.set(pdf.doc, known);
  const there = known.get(bytes);
  if (there) return there;
  const shown = (pdf.doc as unknown as {openImage(source: Buffer): Opened}).openImage(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  const image = {width: shown.width, height: shown.height, shown};
  known.set(bytes, image);
  return image;
}

const place = (pdf: Pdf, image: Image, x: number, y: number, width: number, height: number) => void pdf.doc.image(image.shown as never, x, y, {width, height});

const altOf = ({caption}: SheetPhoto) => `Photo${caption === "" ? " of the garment" : `: ${caption}`}`;

/** @returns where it ends */
export function drawCover(flow: Flow, part: Structure, photo: SheetPhoto, photos: PhotoBytes, top: number): number {
  const image = openImage(flow.pdf, photos.get(photo.photo)!);
  const scale = Math.min(coverRoom.width / image.width, coverRoom.height / image.height);
  const [width, height] = [image.width * scale, image.height * scale];
  const x = flow.left + flow.width - width;
  flow.pdf.tag(part, "Figure", () => place(flow.pdf, image, x, top, width, height), altOf(photo));
  return top + height + caption(flow, part, photo, x, top + height, width);
}

/** The others: rows as wide as the page, each photo as tall as its neighbours. */
export function drawPhotos(flow: Flow, part: Structure, wanted: readonly SheetPhoto[], photos: PhotoBytes): void {
  const shown = wanted.filter(({photo}) => photos.has(photo)).map((photo) => ({photo, image: openImage(flow.pdf, photos.get(photo.photo)!)}));
  if (shown.length === 0) return;
  flow.need(rowHeight + 40);
  flow.block(part, "H2", "Photos", {face: "sans bold", size: 10.5, after: 4});
  let x = 0;
  let tallest = 0;
  for (const {photo, image} of shown) {
    const width = Math.min((image.width / image.height) * rowHeight, 170);
    const height = (width / image.width) * image.height;
    if (x > 0 && x + width > flow.width) {
      flow.y += tallest + gap;
      flow.need(rowHeight + 24);
      [x, tallest] = [0, 0];
    }
    const [at, top] = [flow.left + x, flow.y];
    flow.pdf.tag(part, "Figure", () => place(flow.pdf, image, at, top, width, height), altOf(photo));
    tallest = Math.max(tallest, height + caption(flow, part, photo, at, top + height, width));
    x += width + gap;
  }
  flow.y += tallest + 10;
}

/** @returns its height */
function caption(flow: Flow, part: Structure, photo: SheetPhoto, x: number, y: number, width: number): number {
  if (photo.caption === "") return 0;
  const lines = linesOf("sans", photo.caption, 7.2, width).slice(0, 3);
  flow.pdf.tag(part, "Caption", () => lines.forEach((line, i) => flow.pdf.words(line, x, y + 9 + i * 9.2, {size: 7.2, fill: inks.quiet})));
  return 6 + lines.length * 9.2;
}
