// Small helpers to write SVG as text: elements with attributes, and text that cannot break out of them.

/** Text safe inside an element or an attribute; characters that XML 1.0 does not know are left out. */
export function escapeXml(text: string): string {
  return text.replace(/(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu, "").replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** An element; `inside` is markup and not escaped. Numbers are cut to 2 decimals. */
export function element(name: string, attributes: Readonly<Record<string, string | number>>, inside = ""): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${typeof value === "number" ? cut(value) : escapeXml(value)}"`);
  return inside === "" ? `<${name}${written.join("")}/>` : `<${name}${written.join("")}>${inside}</${name}>`;
}

/** An element that holds text. */
export const textElement = (attributes: Readonly<Record<string, string | number>>, text: string): string => element("text", attributes, escapeXml(text) || " ");

/** A number with at most 2 decimals. */
export const cut = (value: number): number => Math.round(value * 100) / 100;

/** Ecru paper, indigo ink and thread, ochre top stitching. */
export const colours = {paper: "#f6f1e4", ink: "#1f2d4d", accent: "#b0741c", remembered: "#b0741c", quiet: "#6f6b60", line: "#d9cfb6", dots: "#a79d84", band: "#efe8d6"} as const;

const narrow = new Set("iljtfrI.,:;'|!()[] -");
const wide = new Set("mwMWOQGDHNU%@—");

/** About how wide a text is in a sans-serif face, pixels. Source: own choice; a little above what common faces need. */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const sign of text) width += narrow.has(sign) ? 0.34 : wide.has(sign) ? 0.86 : sign >= "A" && sign <= "Z" ? 0.7 : sign.charCodeAt(0) > 0x2e7f ? 1 : 0.57;
  return width * size;
}

/** A text cut so that it fits a width in pixels. */
export function fitted(text: string, width: number, size: number): string {
  if (textWidth(text, size) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && textWidth(`${signs.join("").trimEnd()}…`, size) > width) signs.pop();
  return `${signs.join("").trimEnd()}…`;
}
