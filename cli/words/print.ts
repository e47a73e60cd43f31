// Pages and JSON on their way to stdout.
import {Page} from "./page.ts";
import {paintFor} from "./paint.ts";

/** A page as wide as the terminal, 80 columns when that is unknown. */
export function newPage(): Page {
  return new Page(process.stdout.columns ?? 80, paintFor(process.stdout, process.env));
}

/** Prints a page; an empty one prints nothing. */
export function printPage({lines}: Page): void {
  if (lines.length > 0) process.stdout.write(`${lines.join("\n")}\n`);
}

/**
 * Prints JSON; lists of numbers stay on one line.
 * @param indent  0 for everything on one line
 */
export function printJson(value: unknown, indent = 2): void {
  const text = JSON.stringify(value, null, indent).replace(/\[\n[-\d.e+,\s]+\]/g, (numbers) => numbers.replace(/\s+/g, " "));
  process.stdout.write(`${text}\n`);
}
