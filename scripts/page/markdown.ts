// Small helpers for generated Markdown: tables whose cells cannot break out, and the line that says a page is generated.

/** Text safe in a table cell. */
export const cell = (text: string): string => text.replace(/\s+/g, " ").trim().replaceAll("|", "\\|").replaceAll("<", "&lt;");

/** Text as code, safe in a table cell; empty stays empty. */
export const code = (text: string): string => (text === "" ? "" : `\`${text.replaceAll("|", "\\|")}\``);

/** A table of ready cells. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  return [heads, heads.map(() => "---"), ...rows].map((row) => `| ${row.join(" | ")} |`).join("\n");
}

/** A whole page. */
export function page(title: string, from: string, parts: readonly string[]): string {
  return [`# ${title}`, `Generated from ${from} with \`npm run docs\`; never edited by hand.`, ...parts].join("\n\n") + "\n";
}
