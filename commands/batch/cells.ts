// One record of a table to its cells and back (RFC 4180), and the guard against cells that a spreadsheet would run as formulas.

/** The signs that can stand between cells. */
export const delimiters = [",", ";", "\t"] as const;
export type Delimiter = (typeof delimiters)[number];

/**
 * The cells of a record, without its line break.
 * @returns null when a quoted cell is not closed or goes on after its closing quote
 * @cost    most records carry no quote and are cut in one step: reading must not take longer than dating
 * @example
 * readCells('0147,"412-0318|3 8 21"', ",") // -> ["0147", "412-0318|3 8 21"]
 */
export function readCells(record: string, delimiter: Delimiter): string[] | null {
  if (!record.includes('"')) return record.split(delimiter);
  const cells: string[] = [];
  for (let at = 0; ; ) {
    let end: number;
    if (record[at] === '"') {
      let close = record.indexOf('"', at + 1);
      while (close >= 0 && record[close + 1] === '"') close = record.indexOf('"', close + 2);
      if (close < 0) return null;
      cells.push(record.slice(at + 1, close).replaceAll('""', '"'));
      end = close + 1;
      if (end < record.length && record[end] !== delimiter) return null;
    } else {
      end = record.indexOf(delimiter, at);
      if (end < 0) end = record.length;
      cells.push(record.slice(at, end));
    }
    if (end >= record.length) return cells;
    at = end + 1;
  }
}

/** One record of cells, quoted where needed, without line break. */
export function printCells(cells: readonly string[], delimiter: Delimiter): string {
  return cells.map((cell) => (cell.includes('"') || cell.includes(delimiter) || /[\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(delimiter);
}

/** Whether a spreadsheet could take the cell for a formula; a single dash says "not seen". Source: OWASP, CSV Injection: = + - @ tab and carriage return. */
export function isFormula(cell: string): boolean {
  return /^[=+\-@\t\r]/.test(cell) && cell !== "-";
}

/** Puts ' before a cell that could be taken for a formula. */
export const guarded = (cell: string) => (isFormula(cell) ? `'${cell}` : cell);

/** Takes the ' of a guarded cell away again. */
export const unguarded = (cell: string) => (cell.startsWith("'") && isFormula(cell.slice(1)) ? cell.slice(1) : cell);
