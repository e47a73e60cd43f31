// What is wanted on paper, as it stands in the address: so that a link leads to it, and going back finds it again.
import {chartSizes, forms, sheetSizes, tagCodes, type ChartSize, type Form, type SheetSize, type TagCode} from "../../commands/paper/choices.ts";
import {tagFormats} from "../../commands/paper/tag-format.ts";

export const papers = ["sheet", "tags", "listing", "chart", "check"] as const;
export type Paper = (typeof papers)[number];

export const paperNames: Readonly<Record<Paper, string>> = {sheet: "Dating sheet", tags: "Hang tags", listing: "Listing text", chart: "Wall chart", check: "Check a sheet"};

export interface Wish {
  readonly what: Paper;
  /** Garments by their ids. */
  readonly of: readonly string[];
  /** Null: what is usual where the shop is. */
  readonly size: SheetSize | null;
  readonly photos: number;
  /** Whether sheets tell what a garment may be worth. */
  readonly worth: boolean;
  readonly format: string;
  readonly code: TagCode;
  readonly price: boolean;
  readonly form: Form;
  readonly book: string;
  readonly chart: ChartSize;
}

/** So many ids go into an address; more are kept by the page alone. */
const mostInAddress = 60;

export const usual: Wish = {what: "sheet", of: [], size: null, photos: 4, worth: false, format: tagFormats[0]!.id, code: "qr", price: true, form: "plain", book: "", chart: "a3"};

export function readWish(search: string): Wish {
  const given = new URLSearchParams(search);
  const one = <T extends string>(name: string, all: readonly T[], otherwise: T): T => all.find((value) => value === given.get(name)) ?? otherwise;
  return {
    what: one("what", papers, usual.what),
    of: (given.get("of") ?? "").split(",").filter((id) => /^[a-z0-9]{12,32}$/.test(id)),
    size: given.has("size") ? one("size", sheetSizes, "a4") : null,
    photos: /^\d{1,2}$/.test(given.get("photos") ?? "") ? Math.min(12, Number(given.get("photos"))) : usual.photos,
    worth: given.get("worth") === "yes",
    format: one("format", tagFormats.map(({id}) => id), usual.format),
    code: one("code", tagCodes, usual.code),
    price: given.get("price") !== "no",
    form: one("form", forms, usual.form),
    book: given.get("book") ?? "",
    chart: one("chart", chartSizes, usual.chart),
  };
}

/** Only what is not usual stands in the address. */
export function writeWish(wish: Wish): string {
  const entries: [string, string][] = [];
  const set = (name: string, value: string, otherwise: string) => value !== otherwise && entries.push([name, value]);
  set("what", wish.what, usual.what);
  if (wish.of.length <= mostInAddress) set("of", wish.of.join(","), "");
  set("size", wish.size ?? "", "");
  set("photos", String(wish.photos), String(usual.photos));
  set("worth", wish.worth ? "yes" : "", "");
  set("format", wish.format, usual.format);
  set("code", wish.code, usual.code);
  set("price", wish.price ? "" : "no", "");
  set("form", wish.form, usual.form);
  set("book", wish.book, "");
  set("chart", wish.chart, usual.chart);
  return entries.length === 0 ? "" : `?${entries.map(([name, value]) => `${name}=${encodeURIComponent(value).replaceAll("%2C", ",")}`).join("&")}`;
}
