// The sheet that every picture of the guide is drawn on: ecru paper, a heading, a quiet line below it.
import {colours, cut, element, escapeXml, textElement} from "../../rulebooks/svg.ts";

/** Left and right margin, pixels. */
export const margin = 28;
/** Where a picture may begin below its heading. */
export const top = 76;

export interface Sheet {
  readonly title: string;
  /** One quiet line below the title: how to read the picture. */
  readonly how: string;
  readonly width: number;
  readonly height: number;
}

/** A whole SVG document: no scripts, no outside fonts, no links. */
export function sheet({title, how, width, height}: Sheet, inside: readonly string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${cut(height)}" viewBox="0 0 ${width} ${cut(height)}" role="img" font-family="sans-serif">`,
    element("title", {}, escapeXml(title)),
    element("rect", {width, height, fill: colours.paper}),
    textElement({x: margin, y: 37, "font-size": 19, "font-family": "serif", fill: colours.ink}, title),
    textElement({x: margin, y: 57, "font-size": 12, fill: colours.quiet}, how),
    ...inside,
    "</svg>",
    "",
  ].join("\n");
}

type Anchor = "start" | "middle" | "end";

/** Words in ink or quiet. */
export function words(x: number, y: number, text: string, {size = 12, anchor = "start", fill = colours.ink, weight = "normal"}: {size?: number; anchor?: Anchor; fill?: string; weight?: string} = {}): string {
  return textElement({x, y, "font-size": size, "text-anchor": anchor, fill, "font-weight": weight}, text);
}

/** A line of even stitches. */
export const stitches = (d: string, colour: string = colours.accent): string => element("path", {d, stroke: colour, "stroke-width": 1.6, "stroke-dasharray": "6 4", "stroke-linecap": "round", fill: "none"});

/** A thin plain line. */
export const line = (d: string, colour: string = colours.ink, width = 1): string => element("path", {d, stroke: colour, "stroke-width": width, fill: "none"});
