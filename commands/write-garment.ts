// Writes a garment from what was given in single pieces: flags, columns, answers. Given pieces win over what was written before.
import type {Garment, Problem} from "../engine/index.ts";
import * as say from "./problems.ts";

/** Pieces as a person gives them; several makers or values are divided by "|". */
export interface GarmentPieces {
  readonly maker?: string;
  readonly market?: string;
  readonly type?: string;
  /** Printed rows; they take the place of all rows written before. */
  readonly rows?: readonly string[];
  /** Pairs like "label=green-satin"; an empty value takes the mark out. */
  readonly saw?: readonly string[];
}

/** One text, or several divided by "|". Blanks around them do not count. */
export function oneOrSeveral(text: string): string | string[] {
  if (!text.includes("|")) return text.trim();
  const parts = text.split("|").map((part) => part.trim()).filter((part) => part !== "");
  return parts.length === 1 ? parts[0]! : parts;
}

/** Puts pieces into a garment; all problems at once. */
export function writeGarment(before: Garment, pieces: GarmentPieces): {garment: Garment; problems: Problem[]} {
  const problems: Problem[] = [];
  const saw = {...before.saw, ...(pieces.rows && pieces.rows.length > 0 ? {rows: [...pieces.rows]} : {})} as Garment["saw"];
  for (const pair of pieces.saw ?? []) {
    const sign = pair.indexOf("=");
    const [mark, value] = [pair.slice(0, sign).trim(), pair.slice(sign + 1).trim()];
    if (sign < 1) problems.push(say.notPair("--saw", pair));
    else if (value === "") delete saw[mark];
    else if (mark === "rows") saw.rows = value.split("|");
    else Object.defineProperty(saw, mark, {value: oneOrSeveral(value), enumerable: true, configurable: true, writable: true});
  }
  const garment = {
    ...before,
    ...(pieces.maker === undefined ? {} : {maker: oneOrSeveral(pieces.maker)}),
    ...(pieces.market === undefined ? {} : {market: pieces.market}),
    ...(pieces.type === undefined ? {} : {type: pieces.type}),
    saw,
  };
  return {garment, problems};
}
