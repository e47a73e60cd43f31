// How printed characters are mistaken for one another: symmetric, so a typed character is as likely to stand for its look-alike as the reverse.

/** Chance that one is read as the other. Source: own choice, docs/decisions/0003-look-alikes.md. */
export const lookAlikes: readonly (readonly [string, string, number])[] = [
  ["3", "8", 0.0006], ["0", "8", 0.0003], ["5", "6", 0.0004], ["1", "7", 0.0006], ["6", "8", 0.0004], ["3", "5", 0.0002],
  ["0", "6", 0.0003], ["0", "9", 0.0002], ["4", "9", 0.0002], ["O", "0", 0.02], ["I", "1", 0.02], ["S", "5", 0.002],
  ["B", "8", 0.002], ["Z", "2", 0.002], ["G", "6", 0.001], ["D", "0", 0.001], ["Q", "O", 0.001], ["C", "G", 0.001],
  ["E", "F", 0.001], ["U", "V", 0.001], ["M", "N", 0.001], ["P", "R", 0.001],
];

export const digits = "0123456789";
export const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
export const characters = digits + letters;

/** Weight of each true character that a cell may stand for. */
export type CellWeights = ReadonlyMap<string, number>;

const table = new Map<string, Map<string, number>>();
for (const character of characters) table.set(character, new Map([[character, 1]]));
for (const [a, b, chance] of lookAlikes) {
  for (const [from, to] of [[a, b], [b, a]] as const) {
    const row = table.get(from)!;
    row.set(to, chance);
    row.set(from, row.get(from)! - chance);
  }
}

/** For a character as typed: the chance of seeing it, for each true character. Characters outside the table stand for themselves. */
export function typedCell(character: string): CellWeights {
  return table.get(character) ?? new Map([[character, 1]]);
}

/** An unreadable cell: every figure and letter alike. */
export const unreadableCell: CellWeights = new Map([...characters].map((character) => [character, 0.1]));
