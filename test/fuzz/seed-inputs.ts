// Real inputs that the fuzz tests start from: the garments and books of the demo, as files, as lines of a table and as lines of JSON.
import {readFileSync, readdirSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {printCells} from "../../commands/batch/cells.ts";
import {readColumns, type Columns} from "../../commands/batch/columns.ts";
import type {Book, Garment} from "../../engine/index.ts";
import {rowsId} from "../../engine/index.ts";
import {loadGarment} from "../../rulebooks/load.ts";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const filesIn = (folder: string) => readdirSync(at(folder)).filter((name) => name.endsWith(".yaml")).sort().map((name) => at(`${folder}/${name}`));

/** Garments as their files say it, and as checked values. */
export const garmentFiles: readonly string[] = filesIn("rulebooks/demo/garments").map((path) => readFileSync(path, "utf8"));
export const garments: readonly Garment[] = filesIn("rulebooks/demo/garments").flatMap((path) => loadGarment(path).garment ?? []);

/** Books in one file each: long ones of the demo, a short one of the tests. */
export const bookFiles: readonly string[] = [at("test/fixtures/wickerlow.yaml"), ...filesIn("rulebooks/makers")].map((path) => readFileSync(path, "utf8"));

/** A garment as a line of JSON. */
export const jsonLines: readonly string[] = garments.map((garment) => JSON.stringify(garment));

/** The garments as a table: its columns, and a line for each whose cells can say everything. */
export function tableOf(books: readonly Book[]): {columns: Columns; lines: readonly string[]} {
  const marks = [...new Set(garments.flatMap(({saw}) => Object.keys(saw)))];
  const {columns, problems} = readColumns(["garment", "maker", "market", "type", ...marks].join(","), books, [], "table");
  if (problems) throw new Error(problems.map(({what}) => what).join("\n"));
  const cellOf = (value: unknown): string => (Array.isArray(value) ? value.map(cellOf).join("|") : typeof value === "object" && value !== null ? "" : String(value ?? ""));
  const lines = garments.map(({garment, maker, market, type, saw}) =>
    printCells([garment, cellOf(maker), market ?? "", type ?? "", ...marks.map((mark) => cellOf(mark === rowsId ? saw.rows : saw[mark]))], ","),
  );
  return {columns, lines};
}
