// Breaks words into lines of a given width.

/** How many columns a text takes: signs that combine take none. */
export const columnsOf = (text: string) => [...text.normalize("NFC").replace(/\p{Mn}/gu, "")].length;

/** Text from a file, with everything that could steer a terminal taken out. */
export const plainText = (text: string) => text.replace(/\s+/g, " ").replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, "");

/**
 * Breaks a text at blanks.
 * @param width  columns of a whole line, indent included; never less than 20 columns of text
 * @param first  what stands before the first line; the other lines are indented as far
 */
export function wrap(text: string, width: number, first = ""): string[] {
  const indent = columnsOf(first);
  const room = Math.max(20, width - indent);
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && columnsOf(line) + 1 + columnsOf(word) > room) {
      lines.push(line);
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
    while (columnsOf(line) > room) {
      lines.push([...line].slice(0, room).join(""));
      line = [...line].slice(room).join("");
    }
  }
  lines.push(line);
  return lines.map((one, i) => (i === 0 ? first : " ".repeat(indent)) + one);
}

/** Fills up with blanks to a number of columns. */
export const padded = (text: string, columns: number) => text + " ".repeat(Math.max(0, columns - columnsOf(text)));

/** Puts a text in the middle of a number of columns. */
export function centred(text: string, columns: number): string {
  const free = Math.max(0, columns - columnsOf(text));
  return " ".repeat(Math.floor(free / 2)) + text + " ".repeat(Math.ceil(free / 2));
}
