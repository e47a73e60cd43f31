// Prints rows on a label still flat and new: where every character stands, and how much ink lies where.
import {createCanvas} from "@napi-rs/canvas";
import type {Random} from "../simulate/random.ts";
import {between, eitherWay} from "./chance.ts";
import {faces, type Face} from "./fonts.ts";
import {plane, type Plane} from "./raster.ts";
import type {MadeRow, RowKind} from "./rows.ts";

/** Left, top, right, bottom in pixels of the label. */
export type Box = readonly [number, number, number, number];

export interface PrintedLine extends MadeRow {
  readonly face: Face;
  readonly box: Box;
}

export interface Print {
  /** 0 no ink, 1 full. */
  readonly ink: Plane;
  readonly lines: readonly PrintedLine[];
}

const codes: readonly RowKind[] = ["lot", "plant", "date", "registration", "size"];
const wordFaces = faces.filter(({printing}) => printing !== "dot matrix" && printing !== "stencil");
const probe = createCanvas(10, 10).getContext("2d");

/** Prints rows in capitals of about the given height. */
export function printRows(random: Random, rows: readonly MadeRow[], capital: number): Print {
  const wordFace = random.pick(wordFaces);
  const codeFace = random.happens(0.7) ? random.pick(faces) : wordFace;
  const margin = Math.round(capital * 2);
  let top = margin + capital;
  const set = rows.map((row) => {
    const isCode = codes.includes(row.kind);
    const face = isCode ? codeFace : wordFace;
    const height = capital * between(random, isCode ? [0.9, 1.15] : [0.9, 1.05]);
    const size = (height / capitalOf(face, 100)) * 100;
    const spacing = size * random.pick([0, 0, 0.03, 0.08]);
    const line = {row, face, size, spacing, base: top, jumps: isCode && random.happens(0.4) ? height * 0.06 : 0, width: widthOf(row.text, face, size, spacing)};
    top += height * between(random, [1.55, 2.2]);
    return line;
  });
  const width = Math.round(Math.max(...set.map((line) => line.width)) + margin * 2 + capital * 2);
  const height = Math.round(top + margin);
  const leftmost = random.happens(0.5);
  const canvas = createCanvas(width, height);
  const context = canvas.getContext("2d");
  context.fillStyle = "#000";
  context.fillRect(0, 0, width, height);
  context.fillStyle = "#fff";
  const lines = set.map(({row, face, size, spacing, base, jumps, width: wide}) => {
    let x = leftmost ? margin : (width - wide) / 2 + eitherWay(random, capital) * 0.5;
    context.font = `${size}px "${face.name}"`;
    let box: Box = [Infinity, Infinity, -Infinity, -Infinity];
    for (const character of row.text) {
      const y = base + eitherWay(random, jumps);
      context.fillText(character, x, y);
      const {actualBoundingBoxLeft: left, actualBoundingBoxRight: right, actualBoundingBoxAscent: up, actualBoundingBoxDescent: down, width: step} = context.measureText(character);
      if (character !== " ") box = [Math.min(box[0], x - left), Math.min(box[1], y - up), Math.max(box[2], x + right), Math.max(box[3], y + down)];
      x += step + spacing;
    }
    return {...row, face, box};
  });
  const pixels = context.getImageData(0, 0, width, height).data;
  return {ink: plane(width, height, Float32Array.from({length: width * height}, (_, i) => pixels[i * 4]! / 255)), lines};
}

function capitalOf(face: Face, size: number): number {
  probe.font = `${size}px "${face.name}"`;
  return probe.measureText("H0").actualBoundingBoxAscent;
}

function widthOf(text: string, face: Face, size: number, spacing: number): number {
  probe.font = `${size}px "${face.name}"`;
  return [...text].reduce((sum, character) => sum + probe.measureText(character).width + spacing, 0);
}
