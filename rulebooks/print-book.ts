// A checked book as the YAML of one file: to be read, copied and changed.
import {stringify} from "yaml";
import type {Book} from "../engine/rule/schema.ts";

/** Reads back to the same book. Long sentences are folded, months and codes stay text. */
export function printBook(book: Book): string {
  return stringify(book, {version: "1.2", schema: "core", aliasDuplicateObjects: false, lineWidth: 140});
}
