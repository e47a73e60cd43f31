// One record of a table to the content of a garment, or everything that has to be mended in it.
import type {Problem} from "../../../engine/index.ts";
import {printPath} from "../../../rulebooks/place.ts";
import {checkShape} from "../../../rulebooks/shape.ts";
import {kindOf} from "../../../state/garment-kind.ts";
import {readTagSize} from "../../../state/tag-size.ts";
import {contentSchema, type Content} from "../../../store/model.ts";
import {readMeasures} from "../../state/measures-cell.ts";
import {oneOrSeveral} from "../../write-garment.ts";
import * as say from "../problems.ts";
import {readRows, readSeen} from "./mark-cell.ts";
import {readMoney} from "./money-cell.ts";
import {entryColumns, type EntryColumn, type Target} from "./column.ts";
import type {TableRecord} from "./read-table.ts";

export type ReadContent = {readonly line: number; readonly content: Content; readonly problems?: undefined} | {readonly line: number; readonly content?: undefined; readonly problems: readonly Problem[]};

/**
 * @param targets   what each column is taken as; "" leaves it out
 * @param currency  of amounts that name none
 */
export function readRecord({line, cells}: TableRecord, targets: readonly Target[], currency: string | null): ReadContent {
  const at = `line ${line}`;
  const problems: Problem[] = [];
  const cell = (name: EntryColumn) => cells[targets.indexOf(name)]?.trim() ?? "";
  const seen = (name: EntryColumn) => (cell(name) === "-" ? "" : cell(name));
  const money = (name: "paid" | "asked") => {
    if (seen(name) === "") return null;
    const read = readMoney(cell(name), currency);
    if (!read) problems.push(say.badMoney(`${at} ${name}`, cell(name)));
    return read;
  };
  const saw: Record<string, unknown> = {};
  const rows = readRows(cell("rows"));
  if (rows) saw.rows = rows;
  targets.forEach((target, i) => {
    if (target === "" || (entryColumns as readonly string[]).includes(target)) return;
    const value = readSeen(cells[i]!.trim());
    if (value !== undefined) Object.defineProperty(saw, target, {value, enumerable: true, configurable: true, writable: true});
  });
  if (cell("garment") === "") problems.push(say.noNumber(at));
  const {answer: measures = [], problems: slipsOfTape = []} = readMeasures(seen("measures"), seen("type") || undefined, `${at} measures`);
  problems.push(...slipsOfTape);
  const tag = seen("size") === "" ? null : readTagSize(cell("size").slice(0, 200), kindOf(seen("type") || undefined));
  const given = {
    garment: {
      garment: cell("garment") || "?",
      ...(cell("title") ? {title: cell("title")} : {}),
      ...(seen("maker") ? {maker: oneOrSeveral(cell("maker"))} : {}),
      ...(seen("market") ? {market: cell("market")} : {}),
      ...(seen("type") ? {type: cell("type")} : {}),
      saw,
      ...(cell("note") ? {note: cell("note")} : {}),
    },
    place: cell("place"),
    ...(seen("standing") ? {standing: cell("standing").toLowerCase()} : {}),
    paid: money("paid"),
    asked: money("asked"),
    ...(measures.length > 0 || tag ? {sizes: {measures, tag}} : {}),
    tags: cell("tags").split("|").map((tag) => tag.trim()).filter((tag) => tag !== ""),
  };
  const {fits, problems: slips = []} = checkShape(contentSchema, given, (path) => `${at} ${printPath(path)}`);
  return fits && problems.length === 0 ? {line, content: fits} : {line, problems: [...problems, ...slips]};
}
