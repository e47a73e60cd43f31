// A picture of reliability: what was said from left to right, what was right from the bottom up, on the slanting line all is honest.
import type {ReliabilityBin} from "../../../reader/fit-map.ts";

const side = 360;
const edge = 56;

/**
 * An SVG with two series, before and after, told apart by shape and by words, not by colour alone.
 * @param title  what was counted
 */
export function reliabilityPicture(title: string, before: readonly ReliabilityBin[], after: readonly ReliabilityBin[]): string {
  const x = (p: number) => (edge + p * side).toFixed(1);
  const y = (p: number) => (edge + (1 - p) * side).toFixed(1);
  const size = (count: number) => 3 + Math.min(9, Math.sqrt(count) / 2);
  const ticks = [0, 0.25, 0.5, 0.75, 1].flatMap((p) => [
    `<path d="M${x(p)} ${y(0)}v5M${x(0)} ${y(p)}h-5" stroke="#333"/>`,
    `<text x="${x(p)}" y="${Number(y(0)) + 20}" text-anchor="middle">${p * 100}</text><text x="${Number(x(0)) - 9}" y="${Number(y(p)) + 4}" text-anchor="end">${p * 100}</text>`,
  ]);
  const square = ({said, right, count}: ReliabilityBin) => `<rect x="${(Number(x(said)) - size(count)).toFixed(1)}" y="${(Number(y(right)) - size(count)).toFixed(1)}" width="${(2 * size(count)).toFixed(1)}" height="${(2 * size(count)).toFixed(1)}" fill="none" stroke="#9a3b26" stroke-width="1.5"><title>${tell("before", said, right, count)}</title></rect>`;
  const disc = ({said, right, count}: ReliabilityBin) => `<circle cx="${x(said)}" cy="${y(right)}" r="${size(count).toFixed(1)}" fill="#23395d" fill-opacity="0.75"><title>${tell("after", said, right, count)}</title></circle>`;
  const width = side + 2 * edge;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${width + 34}" width="${width}" height="${width + 34}" font-family="sans-serif" font-size="12" fill="#222" role="img" aria-label="${title}">`,
    `<rect width="${width}" height="${width + 34}" fill="#fff"/>`,
    `<text x="${edge}" y="26" font-size="15">${title}</text>`,
    `<path d="M${x(0)} ${y(0)}H${x(1)}M${x(0)} ${y(0)}V${y(1)}" stroke="#333"/><path d="M${x(0)} ${y(0)}L${x(1)} ${y(1)}" stroke="#888" stroke-dasharray="5 4"/>`,
    ...ticks,
    ...before.map(square),
    ...after.map(disc),
    `<text x="${x(0.5)}" y="${width - 12}" text-anchor="middle">said, in 100</text><text transform="translate(16 ${y(0.5)}) rotate(-90)" text-anchor="middle">right, of 100</text>`,
    `<rect x="${edge}" y="${width + 8}" width="12" height="12" fill="none" stroke="#9a3b26" stroke-width="1.5"/><text x="${edge + 20}" y="${width + 18}">before</text><circle cx="${edge + 96}" cy="${width + 14}" r="6" fill="#23395d" fill-opacity="0.75"/><text x="${edge + 110}" y="${width + 18}">after; larger where there are more</text>`,
    "</svg>",
    "",
  ].join("\n");
}

const tell = (when: string, said: number, right: number, count: number) => `${when}: says ${Math.round(said * 100)} in 100, right ${Math.round(right * 100)} of 100 (${count})`;
