// What drawings of papers share: a drawing with its size, words in it, and lines; lengths in points.
import {cut, element, textElement} from "../../rulebooks/svg.ts";
import type {Face} from "../face/faces.ts";

/** Colours of papers: ink on white, quiet words 6:1, stitches for drawing and, darker, for words. */
export const inks = {ink: "#1f2d4d", quiet: "#535a6b", line: "#cfc7b2", band: "#f3efe4", stitch: "#b0741c", "stitch words": "#845208", paper: "#ffffff"} as const;

/** Something drawn, as SVG markup without its outer element, with its size in points. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly inside: string;
  /** Points for one unit of the markup; 1 when left out. */
  readonly scale?: number;
  /** Said to those who do not see it. */
  readonly label: string;
}

export interface WordsLook {
  readonly size: number;
  readonly face?: Face;
  readonly anchor?: "start" | "middle" | "end";
  readonly fill?: string;
}

/** Words on a baseline. */
export function words(x: number, y: number, text: string, {size, face = "sans", anchor = "start", fill = inks.ink}: WordsLook): string {
  return textElement({
    x, y, "font-size": size, fill,
    ...(anchor === "start" ? {} : {"text-anchor": anchor}),
    ...(face.startsWith("serif") ? {"font-family": "serif"} : {}),
    ...(face.endsWith("bold") ? {"font-weight": "bold"} : {}),
  }, text);
}

/** A plain line. */
export const stroke = (d: string, width = 0.6, colour: string = inks.ink): string => element("path", {d, stroke: colour, "stroke-width": width, fill: "none"});

/** A row of even stitches. */
export const stitches = (d: string, width = 1.1, colour: string = inks.stitch): string => element("path", {d, stroke: colour, "stroke-width": width, "stroke-dasharray": "5 3", "stroke-linecap": "round", fill: "none"});

/** A drawing as an SVG element for a web page. */
export function svgOf({width, height, inside, scale = 1, label}: Drawing): string {
  return element("svg", {xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${cut(width / scale)} ${cut(height / scale)}`, width: cut(width), height: cut(height), "font-family": "sans-serif", role: "img", "aria-label": label}, inside);
}

export const points = {perMm: 72 / 25.4} as const;
export const mm = (length: number): number => length * points.perMm;
