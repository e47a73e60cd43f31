// The characters of a row as typed: which stretch of the text each one is, so that one can be put in doubt.

export interface TypedCell {
  readonly from: number;
  readonly until: number;
  readonly text: string;
  readonly doubtful: boolean;
  /** What stands between the character before and this one, blanks apart. */
  readonly sign: string;
}

/** The characters of a row in order; separators are none. */
export function typedCells(text: string): TypedCell[] {
  const cells: TypedCell[] = [];
  const sign = (at: number) => text.slice(cells.at(-1)?.until ?? 0, at).trim();
  for (let i = 0; i < text.length; i++) {
    const close = text[i] === "(" ? text.indexOf(")", i) : -1;
    if (close > i) {
      cells.push({from: i, until: close + 1, text: text.slice(i, close + 1), doubtful: true, sign: sign(i)});
      i = close;
    } else if (/[0-9a-z?]/i.test(text[i]!)) cells.push({from: i, until: i + 1, text: text[i]!, doubtful: text[i] === "?", sign: sign(i)});
  }
  return cells;
}

/** The row with another text for one character. */
export function replaceCell(text: string, {from, until}: TypedCell, by: string): string {
  return text.slice(0, from) + by + text.slice(until);
}

/** What a doubtful character may be, with weights in 100: "(3:80/8:20)" is 3 and 8. */
export function choicesOf(text: string): {readonly character: string; readonly weight: number}[] {
  if (text === "?") return [];
  if (!text.startsWith("(")) return [{character: text.toUpperCase(), weight: 100}];
  const parts = text.slice(1, -1).split("/").map((part) => part.split(":"));
  return parts.map(([character, weight]) => ({character: character!.trim().toUpperCase(), weight: weight === undefined ? Math.round(100 / parts.length) : Number(weight)}));
}

/** The other way round. */
export function printChoices(choices: readonly {readonly character: string; readonly weight: number}[]): string {
  const some = choices.filter(({character, weight}) => /^[0-9A-Z]$/i.test(character) && weight > 0);
  if (some.length === 0) return "?";
  if (some.length === 1) return some[0]!.character.toUpperCase();
  return `(${some.map(({character, weight}) => `${character.toUpperCase()}:${weight}`).join("/")})`;
}
