// One record of a table, or one thing of a JSON list, to a sale, or everything that has to be mended in it.
import type {Problem} from "../../../engine/index.ts";
import {printPath} from "../../../rulebooks/place.ts";
import {checkShape} from "../../../rulebooks/shape.ts";
import {grades} from "../../../state/model.ts";
import {saleSchema, type Amount, type Sale} from "../../../worth/model.ts";
import type {TableRecord} from "../../rack/table/read-table.ts";
import * as say from "../problems.ts";
import {readDay, readMade, type DayOrder} from "./day-cell.ts";
import {readPrice} from "./price-cell.ts";
import type {SaleColumn} from "./sale-column.ts";

export type ReadSale = {readonly line: number; readonly sale: Sale; readonly problems?: undefined} | {readonly line: number; readonly sale?: undefined; readonly problems: readonly Problem[]};

export interface Habits {
  /** Of amounts that name none. */
  readonly currency: string | null;
  readonly days: DayOrder | null;
}

/** @param targets  what each column is taken as; "" leaves it out */
export function readSaleRecord({line, cells}: TableRecord, targets: readonly (SaleColumn | "")[], {currency, days}: Habits): ReadSale {
  const problems: Problem[] = [];
  const at = (column: SaleColumn) => `line ${line} ${column}`;
  const cell = (column: SaleColumn) => {
    const text = cells[targets.indexOf(column)]?.trim() ?? "";
    return text === "-" ? "" : text;
  };
  const slip = <T>(problem: Problem, instead: T): T => {
    problems.push(problem);
    return instead;
  };
  const usual = cell("currency") || currency;
  const money = (column: "price" | "fees"): Amount | null => {
    if (cell(column) === "") return null;
    const read = readPrice(cell(column), usual);
    if (read === "no currency") return slip(say.noCurrency(at(column), cell(column)), null);
    return read ?? slip(say.notPrice(at(column), cell(column)), null);
  };
  const day = () => {
    const read = readDay(cell("soldOn"), days);
    if (read === "either") return slip(say.eitherDay(at("soldOn"), cell("soldOn")), null);
    return read ?? slip(say.notDay(at("soldOn"), cell("soldOn")), null);
  };
  const made = (column: "madeFrom" | "madeUntil") => (cell(column) === "" ? null : (readMade(cell(column)) ?? slip(say.notMade(at(column), cell(column)), null)));
  const [from, until] = [made("madeFrom"), made("madeUntil")];
  const grade = cell("grade").toLowerCase().replace(/[\s_-]+/g, " ");
  if (grade !== "" && !(grades as readonly string[]).includes(grade)) problems.push(say.notGrade(at("grade"), cell("grade"), grades));
  const price = cell("price") === "" ? slip(say.notPrice(at("price"), ""), null) : money("price");
  const given = {
    soldOn: day(), price, fees: money("fees"), kind: cell("kind").toLowerCase(), maker: cell("maker") || null, lot: cell("lot") || null,
    // One column with a year or a span says both ends.
    madeFrom: (from ?? (targets.includes("madeFrom") ? null : until))?.from ?? null,
    madeUntil: (until ?? (targets.includes("madeUntil") ? null : from))?.until ?? null,
    size: cell("size"), grade: grade || null, channel: cell("channel"), note: cell("note"),
  };
  if (problems.length > 0) return {line, problems};
  const {fits, problems: slips} = checkShape(saleSchema, given, (path) => `line ${line} ${printPath(path)}`);
  return fits ? {line, sale: fits} : {line, problems: slips};
}

/** A bare sale, or one as it is kept. */
export function readSaleJson(given: unknown, line: number, at: string): ReadSale {
  const kept = typeof given === "object" && given !== null ? (given as {sale?: unknown}).sale : undefined;
  const {fits, problems} = checkShape(saleSchema, kept ?? given, (path) => `${at} ${printPath(path)}`.trimEnd());
  return fits ? {line, sale: fits} : {line, problems};
}
