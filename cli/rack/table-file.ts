// Files of tables and lists on the command line: their form, their text, and what their columns are taken as.
import {readFileSync} from "node:fs";
import {NeedsMending} from "../ending.ts";
import {notFound, notOpened} from "../problems.ts";
import * as say from "./problems.ts";

export type Format = "csv" | "json" | "jsonl";

/** What --take says of a column. */
export function columnTaken(given: string): [string, string] {
  const cut = given.lastIndexOf("=");
  if (cut < 1) throw new NeedsMending([say.notTaken(given)]);
  return [given.slice(0, cut), given.slice(cut + 1)];
}

export const formatOf = (file: string): Format => (/\.(?:jsonl|ndjson)$/i.test(file) ? "jsonl" : /\.json$/i.test(file) ? "json" : "csv");

/** @param file  - reads stdin */
export function textOf(file: string): string {
  try {
    return readFileSync(file === "-" ? 0 : file, "utf8");
  } catch (error) {
    const {code = "unknown reason"} = error as NodeJS.ErrnoException;
    throw new NeedsMending([code === "ENOENT" ? notFound(file) : notOpened(file, code)]);
  }
}
