// What a garment's content puts into columns of its own, to be searched and sorted by.
import {writtenRow} from "../../engine/rule/written-row.ts";
import type {Content} from "../model.ts";
import type {Value} from "./database.ts";

/** Values by column, for an insert or an update. */
export function columnsOf({garment, place, standing, asked, dating}: Content): Readonly<Record<string, Value>> {
  return {
    number: garment.garment,
    maker: dating ? dating.maker : typeof garment.maker === "string" ? garment.maker : null,
    type: garment.type ?? "",
    place,
    standing,
    asked: asked?.cents ?? null,
    best: dating?.best ?? null,
    probability: dating?.probability ?? null,
    sureness: dating?.sureness ?? "undated",
    odd: dating?.odd ?? 0,
    years: dating ? packYears(dating.years) : null,
  };
}

/** First year, then a share a year, as 32-bit numbers. */
function packYears({first, shares}: {first: number; shares: readonly number[]}): Uint8Array {
  return new Uint8Array(Float32Array.of(first, ...shares).buffer);
}

/** The other way round; a copy, since the database may use its bytes again. */
export function unpackYears(bytes: Uint8Array): {readonly first: number; readonly shares: Float32Array} {
  const numbers = new Float32Array(bytes.slice().buffer);
  return {first: numbers[0]!, shares: numbers.subarray(1)};
}

/** Everything that a search looks through, as words. */
export function wordsOf({garment, place, tags}: Content): string {
  const {rows = [], ...marks} = garment.saw;
  return [
    garment.garment,
    garment.title ?? "",
    garment.note ?? "",
    garment.type ?? "",
    garment.market ?? "",
    ...[garment.maker ?? []].flat(),
    place,
    ...tags,
    ...rows.map((row) => plainRow(writtenRow(row).text)),
    ...Object.entries(marks).flatMap(([mark, seen]) => [mark, ...textsIn(seen)]),
  ].join("\n");
}

/** A doubtful character is found by the likeliest one: the first that was written. */
const plainRow = (text: string) => text.replace(/\(([^/:)]*)[^)]*\)/g, "$1");

function textsIn(seen: unknown): string[] {
  if (typeof seen === "string") return [seen];
  if (Array.isArray(seen)) return seen.map(String);
  return seen && typeof seen === "object" && "either" in seen ? Object.keys(seen.either as object) : [];
}
