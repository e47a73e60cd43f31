// The words of help that belong to no single verb. Every example runs as it stands, from the folder of the tool.
export const mainHelp = `
Examples:
  ticking examine rulebooks/demo/garments/0147.yaml --months
  ticking examine --maker marrowfield --saw label=green-satin --row "3 8 21"
  ticking ask
  printf 'garment,maker,rows\\n7,marrowfield,3 8 21\\n' | ticking batch -
  ticking books list

More: ticking help examine, and ticking help exit-codes`;

export const exitCodeHelp = `Exit codes of ticking

  0  fine. A batch in which lines were set aside is fine, too; with --strict it is not.
  1  our fault: a bug. A short message says where to report it; TICKING_DEBUG=1 shows more.
  2  the input needs mending: a flag, a file, a line. Each problem stands on stderr with its place,
     what was found, why that cannot stand, and how to mend it.

A reader that leaves early (head, a pager) ends the command quietly with 0.
`;

/** The part of a verb's help that shows examples. */
export function examples(...lines: readonly string[]): string {
  return `\nExamples:\n${lines.map((line) => `  ${line}`).join("\n")}`;
}
