// Reads the tables of published values that stand in test/outside/data, each with its source.
import {readFileSync} from "node:fs";

/** Every table says where it comes from and how it was checked. */
export interface Sourced {
  readonly source: string;
  readonly verified: string;
}

/** Reads a table; its shape is the caller's word. */
export function readData<T extends Sourced>(name: string): T {
  return JSON.parse(readFileSync(new URL(`../outside/data/${name}.json`, import.meta.url), "utf8")) as T;
}
