// Listing text in its forms: plain, Markdown, and schema.org data.
import type {Form} from "../../commands/paper/choices.ts";
import type {Material} from "../sheet/material.ts";
import type {Listing, Part} from "./listing.ts";
import {isList, plainText} from "./plain.ts";
import {productData} from "./product.ts";

export const formOf: Readonly<Record<Form, {readonly mime: string; readonly ending: string}>> = {
  plain: {mime: "text/plain; charset=utf-8", ending: "txt"},
  markdown: {mime: "text/markdown; charset=utf-8", ending: "md"},
  json: {mime: "application/ld+json; charset=utf-8", ending: "json"},
};

export function writeListing(form: Form, listing: Listing, material: Material): string {
  if (form === "json") return `${JSON.stringify(productData(listing, material), null, 2)}\n`;
  return form === "plain" ? plainText(listing) : markdown(listing);
}

function markdown({title, parts}: Listing): string {
  const body = parts.flatMap(({block, head, lines}) => {
    if (block === "heading") return [];
    const number = block === "intro" || block === "outro" || block === "note";
    const written = lines.map((line) => (number ? escaped(line) : head !== "" && isList(lines) ? `- ${escaped(line)}` : escaped(line)));
    return [[...(head === "" ? [] : [`## ${head}`, ""]), ...written].join("\n")];
  });
  return `# ${escaped(headingOf(parts) ?? title)}\n\n${body.join("\n\n")}\n`;
}

const headingOf = (parts: readonly Part[]) => parts.find(({block}) => block === "heading")?.lines[0];

/** Signs that Markdown (CommonMark 0.31) would take for its own. */
const escaped = (text: string) => text.replace(/([\\`*_[\]<>])/g, "\\$1").replace(/^(\s*)([#+-]|\d+[.)])(?=\s)/, "$1\\$2");
