// What can be chosen of papers, for every way in: sizes, forms, codes.

/** Pages of sheets and tags. */
export const sheetSizes = ["a4", "letter"] as const;
export type SheetSize = (typeof sheetSizes)[number];

/** Pages of wall charts. */
export const chartSizes = ["a3", "a2"] as const;
export type ChartSize = (typeof chartSizes)[number];

/** Forms of listing text: plain, Markdown, schema.org data. */
export const forms = ["plain", "markdown", "json"] as const;
export type Form = (typeof forms)[number];

/** What carries the number on a tag: a square code, or bars. */
export const tagCodes = ["qr", "bars"] as const;
export type TagCode = (typeof tagCodes)[number];

/** So many photos can a sheet show. */
export const mostPhotos = 12;
