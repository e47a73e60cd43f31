// Lays the blocks of a wall chart out in columns: as large as they can be on one page, on several where even the smallest type has no room.
import type {Block} from "./blocks.ts";

export interface Placed {
  readonly block: Block;
  readonly page: number;
  /** From the left and top edge of the room for columns, in points. */
  readonly x: number;
  readonly y: number;
}

export interface LaidOut {
  /** Points for one unit of a block. */
  readonly scale: number;
  readonly pages: number;
  readonly placed: readonly Placed[];
}

export interface Room {
  readonly width: number;
  readonly height: number;
  /** Width of a column at scale 1 that reads well. */
  readonly column: number;
}

const gap = 26;
/** Type of 8.8 points at 0.72 is 6.3 points: the smallest that is read on a wall from half a metre. Source: own choice. */
const severalPages = 0.9;
const scales = [2.2, 2, 1.8, 1.6, 1.45, 1.3, 1.2, 1.1, 1, 0.9, 0.82, 0.75];

export function layOut(blocks: (width: number) => readonly Block[], room: Room): LaidOut {
  let best: LaidOut | null = null;
  // The larger the type, the more pages: the largest that takes one is found by halving.
  let [low, high] = [0, scales.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const laid = at(scales[middle]!, blocks, room);
    if (laid.pages === 1) [best, high] = [laid, middle - 1];
    else low = middle + 1;
  }
  return best ?? at(severalPages, blocks, room);
}

function at(scale: number, blocks: (width: number) => readonly Block[], {width, height, column}: Room): LaidOut {
  const count = Math.max(1, Math.round((width + gap) / (column * scale + gap)));
  const wide = (width - (count - 1) * gap) / count;
  const all = blocks(wide / scale);
  const placed: Placed[] = [];
  let [slot, y] = [0, 0];
  for (let i = 0; i < all.length; i++) {
    // Headings go on with what they stand above.
    let together = 0;
    for (let k = i; k < all.length; k++) {
      together += all[k]!.height * scale;
      if (!all[k]!.keep) break;
    }
    if (y > 0 && y + (all[i]!.keep ? together : all[i]!.height * scale) > height) [slot, y] = [slot + 1, 0];
    placed.push({block: all[i]!, page: Math.floor(slot / count), x: (slot % count) * (wide + gap), y});
    y += all[i]!.height * scale;
  }
  return {scale, pages: Math.floor(slot / count) + 1, placed};
}
