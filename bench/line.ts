// One line of the table: what was measured, and whether it is what was aimed at.

export interface Line {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** At most, or at least, this; left out where nothing was aimed at. */
  readonly most?: number;
  readonly least?: number;
  readonly note?: string;
}

/** A measurement that could not be taken, and why. */
export interface Skipped {
  readonly name: string;
  readonly skipped: string;
}

/** Whether the aim is met; null without an aim. */
export function isMet({value, most, least}: Line): boolean | null {
  if (most === undefined && least === undefined) return null;
  return value <= (most ?? Infinity) && value >= (least ?? -Infinity);
}

const figures = (n: number) => (Math.abs(n) >= 100 ? Math.round(n).toLocaleString("en") : n.toPrecision(3));

/** As one line of text. */
export function printLine(line: Line | Skipped): string {
  if ("skipped" in line) return `${line.name.padEnd(52)} skipped: ${line.skipped}`;
  const {name, value, unit, most, least, note} = line;
  const aim = most !== undefined ? `at most ${figures(most)}` : least !== undefined ? `at least ${figures(least)}` : "";
  const met = {true: "met", false: "NOT MET", null: ""}[String(isMet(line)) as "true" | "false" | "null"];
  return `${name.padEnd(52)} ${figures(value).padStart(9)} ${unit.padEnd(11)} ${aim.padEnd(16)} ${met.padEnd(8)}${note ?? ""}`.trimEnd();
}
