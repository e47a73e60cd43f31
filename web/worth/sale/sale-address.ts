// Which sales are shown, as the address of the page says it: a link, a reload and the way back all show the same.
import {grades} from "../../../state/model.ts";
import {saleQuerySchema, saleSorts, type SaleQuery} from "../../../store/model.ts";

export type SaleView = Omit<SaleQuery, "offset" | "limit">;

/** All sales, the latest first. */
export const allSales: SaleView = withoutPage(saleQuerySchema.parse({}));

/** Reads an address; what is none of our words is left aside, so that any address shows something. */
export function readSaleAddress(search: string): SaleView {
  const said = new URLSearchParams(search);
  const text = (key: string) => said.get(key)?.slice(0, 200) || null;
  const day = (key: string) => (saleQuerySchema.shape.from.safeParse(said.get(key)).success ? said.get(key) : null);
  const among = <T extends string>(key: string, words: readonly T[]) => words.find((word) => word === said.get(key)) ?? null;
  return {
    text: text("text") ?? "",
    kind: text("kind"),
    maker: text("maker"),
    grade: among("grade", grades),
    channel: text("channel"),
    from: day("from"),
    until: day("until"),
    own: said.get("own") === "true" ? true : said.get("own") === "false" ? false : null,
    removed: said.get("removed") === "true",
    sort: among("sort", saleSorts) ?? allSales.sort,
    descending: said.get("descending") !== "false",
  };
}

/** Writes an address: only what differs from all sales; empty, or with its question mark. */
export function writeSaleAddress(view: SaleView): string {
  const said = new URLSearchParams(differing(view));
  return said.size > 0 ? `?${said}` : "";
}

/** The question that the server is asked for one page. */
export const writeSaleQuestion = (view: SaleView, offset: number, limit: number): string => String(new URLSearchParams([...differing(view), ["offset", String(offset)], ["limit", String(limit)]]));

/** How many filters are set; search words and sorting are none. */
export const saleFiltersSet = (view: SaleView): number => differing({...view, text: "", sort: allSales.sort, descending: allSales.descending}).length;

function differing(view: SaleView): [string, string][] {
  const usual = allSales as Readonly<Record<string, unknown>>;
  return Object.entries(view).flatMap(([key, value]) => (value === usual[key] || value === null ? [] : [[key, String(value)]]));
}

function withoutPage({offset: _, limit: __, ...view}: SaleQuery): SaleView {
  return view;
}
