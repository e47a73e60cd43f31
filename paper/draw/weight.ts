// How much a mark tells, as one to five stitches; those that are missing stand as dots, so that none is a sign, too.
import {element} from "../../rulebooks/svg.ts";
import {inks, type Drawing} from "./svg-page.ts";

export function weightStitches(weight: number): Drawing {
  const inside = [0, 1, 2, 3, 4].map((i) => (i < weight ? element("path", {d: `M${i * 12 + 2} 4h8`, stroke: inks.stitch, "stroke-width": 2.2, "stroke-linecap": "round"}) : element("circle", {cx: i * 12 + 6, cy: 4, r: 0.7, fill: inks.quiet})));
  return {width: 60, height: 8, inside: inside.join(""), label: `weight ${weight} of 5`};
}
