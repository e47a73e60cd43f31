// What of the rack is shown, as the address of the page says it: a link, a reload and the way back all show the same.
import {rackQuerySchema, sorts, standings, type RackQuery} from "../../store/model.ts";

/** How the garments are laid out. */
export const layouts = ["hangers", "list"] as const;

export interface RackView {
  readonly query: Omit<RackQuery, "offset" | "limit">;
  readonly layout: (typeof layouts)[number];
}

/** The whole rack, newest change first. */
export const wholeRack: RackView = {query: withoutPage(rackQuerySchema.parse({})), layout: "hangers"};

export const surenesses = ["sure", "likely", "open", "cannot tell", "undated"] as const;

/**
 * Reads an address; what is none of our words is left aside, so that any address shows something.
 * @param search  what stands behind the question mark
 */
export function readAddress(search: string): RackView {
  const said = new URLSearchParams(search);
  const text = (key: string) => said.get(key) || null;
  const number = (key: string, most: number) => (/^\d{1,14}$/.test(said.get(key) ?? "") && Number(said.get(key)) <= most ? Number(said.get(key)) : null);
  const among = <T extends string>(key: string, words: readonly T[]) => words.find((word) => word === said.get(key)) ?? null;
  const atLeast = Number(said.get("atLeast") ?? "0.5");
  return {
    layout: among("layout", layouts) ?? wholeRack.layout,
    query: {
      text: (said.get("text") ?? "").slice(0, 200),
      from: number("from", 9999),
      until: number("until", 9999),
      atLeast: atLeast >= 0 && atLeast <= 1 ? atLeast : 0.5,
      maker: text("maker"),
      type: text("type"),
      place: text("place"),
      standing: among("standing", standings),
      tag: text("tag"),
      askedFrom: number("askedFrom", 1e14),
      askedUntil: number("askedUntil", 1e14),
      sureness: among("sureness", surenesses),
      odd: said.get("odd") === "true" ? true : null,
      removed: said.get("removed") === "true",
      sort: among("sort", sorts) ?? "changed",
      descending: said.get("descending") !== "false",
    },
  };
}

/** Writes an address: only what differs from the whole rack; empty, or with its question mark. */
export function writeAddress({query, layout}: RackView): string {
  const said = new URLSearchParams(differing(query));
  if (layout !== wholeRack.layout) said.set("layout", layout);
  return said.size > 0 ? `?${said}` : "";
}

/** The question that the server is asked for one page of rows. */
export function writeQuestion(query: RackView["query"], offset: number, limit: number): string {
  return String(new URLSearchParams([...differing(query), ["offset", String(offset)], ["limit", String(limit)]]));
}

/** How many filters are set; search words and sorting are none. */
export function filtersSet({query}: RackView): number {
  return differing({...query, text: "", sort: wholeRack.query.sort, descending: true}).filter(([key]) => !(key === "atLeast") && !(key === "until" && query.from !== null)).length;
}

function differing(query: RackView["query"]): [string, string][] {
  const usual = wholeRack.query as Readonly<Record<string, unknown>>;
  return Object.entries(query).flatMap(([key, value]) => (value === usual[key] || value === null ? [] : [[key, String(value)]]));
}

function withoutPage({offset: _, limit: __, ...query}: RackQuery): RackView["query"] {
  return query;
}
