// The formats of hang tags, all our own, in millimetres.

export interface TagFormat {
  readonly id: string;
  /** For people. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** The middle of the hole for the string, from the left and the top edge. */
  readonly hole: {readonly x: number; readonly y: number};
  /** Where the code stands: below the words, or beside them. */
  readonly code: "below" | "beside";
}

export const tagFormats: readonly TagFormat[] = [
  {id: "hand", name: "hand, 55 × 90 mm", width: 55, height: 90, hole: {x: 27.5, y: 8}, code: "below"},
  {id: "ribbon", name: "ribbon, 38 × 120 mm", width: 38, height: 120, hole: {x: 19, y: 8}, code: "below"},
  {id: "ticket", name: "ticket, 90 × 50 mm", width: 90, height: 50, hole: {x: 7, y: 25}, code: "beside"},
  {id: "stub", name: "stub, 60 × 30 mm", width: 60, height: 30, hole: {x: 6, y: 15}, code: "beside"},
];

export const formatNamed = (id: string): TagFormat | undefined => tagFormats.find((format) => format.id === id);

export interface TagPage {
  readonly columns: number;
  readonly rows: number;
  /** Of the block of tags, from the edges of the page. */
  readonly left: number;
  readonly top: number;
}

/** Room at the edges for the marks along which tags are cut, and that printers leave white. Source: own choice. */
const edge = 10;

/** How tags share a page: edge to edge, in the middle. */
export function tagsOn({width, height}: TagFormat, page: {readonly width: number; readonly height: number}): TagPage {
  const columns = Math.floor((page.width - 2 * edge) / width);
  const rows = Math.floor((page.height - 2 * edge) / height);
  return {columns, rows, left: (page.width - columns * width) / 2, top: (page.height - rows * height) / 2};
}

/** Sizes of pages in millimetres. Source: ISO 216; ANSI/ASME Y14.1 for Letter. */
export const pageSizes = {
  a4: {width: 210, height: 297}, letter: {width: 215.9, height: 279.4}, a3: {width: 297, height: 420}, a2: {width: 420, height: 594},
} as const;
