// Listing text without any marks: parts with a blank line between them.
import type {Listing} from "./listing.ts";

export const plainText = ({parts}: Listing): string =>
  `${parts.map(({head, lines}) => [...(head !== "" && isList(lines) ? [`${head}:`] : []), ...lines.map((line) => (head !== "" && isList(lines) ? `- ${line}` : line))].join("\n")).join("\n\n")}\n`;

/** Several lines, or one that is a name with its value, stand as a list below their heading. */
export const isList = (lines: readonly string[]): boolean => lines.length > 1 || /^[^.]{1,24}: /.test(lines[0] ?? "");
