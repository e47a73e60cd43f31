// The version of the tool, from its package file.
import {readFileSync} from "node:fs";

/** Compiled code stands one folder deeper than the source. */
export function version(): string {
  for (const place of ["../package.json", "../../package.json"]) {
    try {
      return (JSON.parse(readFileSync(new URL(place, import.meta.url), "utf8")) as {version: string}).version;
    } catch {
      continue;
    }
  }
  return "unknown";
}
