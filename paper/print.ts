// Papers as bytes of a PDF: the one place where a size becomes points and a paper gets its title.
import type {ChartSize, SheetSize, TagCode} from "../commands/paper/choices.ts";
import {formatNamed, pageSizes} from "../commands/paper/tag-format.ts";
import type {Book, MonthIndex} from "../engine/index.ts";
import {composeChart} from "./chart/compose.ts";
import {mm} from "./draw/svg-page.ts";
import {drawChart} from "./pdf/chart-pdf.ts";
import {openPdf, type Pdf} from "./pdf/open-pdf.ts";
import type {PhotoBytes} from "./pdf/photos.ts";
import {drawSheet} from "./pdf/sheet-pdf.ts";
import {drawTags} from "./pdf/tags-pdf.ts";
import type {Sheet} from "./sheet/sheet.ts";
import type {Tag} from "./tag/tag.ts";

export interface PrintOptions {
  /** Day of printing, 2026-11-25. */
  readonly on: string;
  /** The shop. */
  readonly author: string;
  readonly compress?: boolean;
}

const opened = (title: string, subject: string, size: keyof typeof pageSizes, {on, author, compress = true}: PrintOptions): Pdf =>
  openPdf({title, subject, author, on: new Date(`${on}T12:00:00Z`), page: {width: mm(pageSizes[size].width), height: mm(pageSizes[size].height)}, compress});

/** Sheets that are put into one document one by one, so that not all of them have to be in memory. */
export interface SheetPress {
  add(sheet: Sheet, photos: PhotoBytes): void;
  end(): Promise<Uint8Array>;
}

/** @param title  of the whole document */
export function sheetPress(title: string, size: SheetSize, options: PrintOptions): SheetPress {
  const pdf = opened(title, "When garments were made, how sure that is, and why", size, options);
  return {add: (sheet, photos) => drawSheet(pdf, sheet, photos), end: () => pdf.end()};
}

export function printSheets(sheets: readonly {readonly sheet: Sheet; readonly photos: PhotoBytes}[], size: SheetSize, options: PrintOptions): Promise<Uint8Array> {
  const press = sheetPress(sheetsTitle(sheets.map(({sheet}) => sheet.number)), size, options);
  for (const {sheet, photos} of sheets) press.add(sheet, photos);
  return press.end();
}

export const sheetsTitle = (numbers: readonly string[]): string => (numbers.length === 1 ? `Dating sheet ${numbers[0]}` : `${numbers.length} dating sheets`);

export interface TagOptions {
  readonly format: string;
  readonly code: TagCode;
  readonly size: SheetSize;
}

/** @throws RangeError for a format that does not exist */
export function printTags(tags: readonly Tag[], {format: name, code, size}: TagOptions, options: PrintOptions): Promise<Uint8Array> {
  const format = formatNamed(name);
  if (!format) throw new RangeError(`there is no format of tags called ${name}`);
  const pdf = opened(`Hang tags: ${tags.length}`, format.name, size, options);
  drawTags(pdf, tags, {format, code, page: pageSizes[size]});
  return pdf.end();
}

export function printChart(book: Book, today: MonthIndex, size: ChartSize, options: PrintOptions): Promise<Uint8Array> {
  const pdf = opened(`${book.title}, wall chart`, `Edition ${book.edition}`, size, options);
  drawChart(pdf, composeChart(book, today));
  return pdf.end();
}
