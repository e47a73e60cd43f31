// Draws the icons of the app, a piece of ticking with one line of stitches: `node scripts/run.mjs scripts/make-icons.ts`
import {writeFileSync} from "node:fs";
import {fileURLToPath} from "node:url";
import sharp from "sharp";
import {colours, element} from "../rulebooks/svg.ts";

const size = 512;
/** The stripes of ticking from the left, as x and width: a broad one, and a pair of narrow ones on either side. */
const stripes = [[52, 14], [84, 14], [136, 72], [246, 14], [278, 14], [330, 72], [432, 14], [464, 14]] as const;

/** @param round  corners in pixels; @param inside  share of the side that the drawing takes up */
function icon(round: number, inside: number): string {
  const shift = ((1 - inside) * size) / 2;
  const cloth = stripes.map(([x, width]) => element("rect", {x: x - 9, y: -size, width, height: 3 * size, fill: colours.ink}));
  const thread = element("path", {d: "M-300 316H900", stroke: colours.paper, "stroke-width": 66}) + element("path", {d: "M-278 316H900", stroke: colours.accent, "stroke-width": 26, "stroke-linecap": "round", "stroke-dasharray": "66 58"});
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}">`,
    element("clipPath", {id: "edge"}, element("rect", {width: size, height: size, rx: round})),
    element("g", {"clip-path": "url(#edge)"}, element("rect", {width: size, height: size, fill: colours.paper}) + element("g", {transform: `translate(${shift} ${shift}) scale(${inside})`}, cloth.join("") + thread)),
    "</svg>\n",
  ].join("");
}

const folder = fileURLToPath(new URL("../web/public/", import.meta.url));
const plain = icon(96, 1);
writeFileSync(`${folder}icon.svg`, plain);
// Phones cut this one to their own shape: nothing that matters lies outside the middle eighty in a hundred.
const jobs: [string, string, number][] = [["icon-192", plain, 192], ["icon-512", plain, 512], ["icon-mask", icon(0, 0.7), 512]];
for (const [name, svg, side] of jobs) await sharp(Buffer.from(svg)).resize(side).png({compressionLevel: 9}).toFile(`${folder}${name}.png`);
