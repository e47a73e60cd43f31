// Finds garments: columns and words in the database, years in memory.
import type {Content, RackPage, RackQuery, RackRow} from "../model.ts";
import type {Database, Value} from "./database.ts";
import {shareBetween, yearsIn, type YearShares} from "./years.ts";

const orders: Readonly<Record<RackQuery["sort"], string>> = {changed: "changed_at", number: "number COLLATE NOCASE", date: "best", place: "place COLLATE NOCASE", asked: "asked", sureness: "probability"};

export function searchIn(db: Database): (query: RackQuery) => Promise<RackPage> {
  const years = yearsIn(db);
  return async (query) => {
    const {where, values} = conditions(query);
    const direction = query.descending ? "DESC" : "ASC";
    const order = orders[query.sort];
    // Garments without a value come last either way.
    const fitting = db.all<{n: number}>(`SELECT n FROM garment WHERE ${where} ORDER BY ${order} IS NULL, ${order} ${direction}, n ${direction}`, ...values);
    const known = years();
    const inYears = query.from === null && query.until === null ? fitting : fitting.filter(({n}) => liesIn(known.get(n), query));
    const page = inYears.slice(query.offset, query.offset + query.limit);
    return {total: inYears.length, rows: rowsOf(db, page.map(({n}) => n)), years: summed(inYears, known), values: valuesOf(db)};
  };
}

// A hair below, since shares are kept as 32-bit numbers.
const liesIn = (shares: YearShares | undefined, {from, until, atLeast}: RackQuery) => shares !== undefined && shareBetween(shares, from, until) >= atLeast - 1e-5;

function conditions(query: RackQuery): {where: string; values: Value[]} {
  const parts: [string, ...Value[]][] = [["removed = ?", Number(query.removed)]];
  for (const column of ["maker", "type", "place", "standing", "sureness"] as const) if (query[column] !== null) parts.push([`${column} = ?`, query[column]]);
  if (query.askedFrom !== null) parts.push(["asked >= ?", query.askedFrom]);
  if (query.askedUntil !== null) parts.push(["asked <= ?", query.askedUntil]);
  if (query.odd !== null) parts.push([query.odd ? "odd > 0" : "odd = 0"]);
  if (query.tag !== null) parts.push(["n IN (SELECT n FROM tag WHERE tag = ?)", query.tag]);
  const words = matchOf(query.text);
  if (words !== null) parts.push(["n IN (SELECT rowid FROM words WHERE words MATCH ?)", words]);
  return {where: parts.map(([sql]) => sql).join(" AND "), values: parts.flatMap(([, ...values]) => values)};
}

/** Every word, or its beginning, has to be there; a code like 412-0318 in this order. Null when there is nothing to look for. */
function matchOf(text: string): string | null {
  const words = text.split(/\s+/).map((word) => (word.match(/[\p{L}\p{N}]+/gu) ?? []).join(" ")).filter((word) => word !== "");
  return words.length === 0 ? null : words.map((word) => `"${word}"*`).join(" AND ");
}

function summed(fitting: readonly {readonly n: number}[], known: ReadonlyMap<number, YearShares>): RackPage["years"] {
  let first = Infinity;
  let last = -Infinity;
  const dated = fitting.flatMap(({n}) => known.get(n) ?? []);
  for (const {first: from, shares} of dated) {
    first = Math.min(first, from);
    last = Math.max(last, from + shares.length - 1);
  }
  if (last < first) return {first: 1900, garments: []};
  const garments = new Float64Array(last - first + 1);
  for (const {first: from, shares} of dated) for (let i = 0; i < shares.length; i++) garments[from - first + i]! += shares[i]!;
  return {first, garments: Array.from(garments, (sum) => Number(sum.toFixed(4)))};
}

function rowsOf(db: Database, numbers: readonly number[]): RackRow[] {
  return numbers.map((n) => {
    const {id, rev, changed_at, content, maker} = db.one<{id: string; rev: number; changed_at: string; content: string; maker: string | null}>("SELECT id, rev, changed_at, content, maker FROM garment WHERE n = ?", n)!;
    const {garment, place, standing, asked, tags, photos, dating} = JSON.parse(content) as Content;
    return {
      id, rev, number: garment.garment, title: garment.title ?? "", type: garment.type ?? "", maker, place, standing, asked, tags,
      cover: photos[0]?.photo ?? null, photos: photos.length, dating: dating && (({years: _, ...rest}) => rest)(dating), changedAt: changed_at,
    };
  });
}

function valuesOf(db: Database): RackPage["values"] {
  const distinct = (column: string) =>
    db.all<{value: string}>(`SELECT DISTINCT ${column} AS value FROM garment WHERE removed = 0 AND ${column} IS NOT NULL AND ${column} <> '' ORDER BY 1`).map(({value}) => value);
  return {makers: distinct("maker"), types: distinct("type"), places: distinct("place"), tags: db.all<{tag: string}>("SELECT DISTINCT tag FROM tag ORDER BY tag").map(({tag}) => tag)};
}
