// QR codes and Code 128 bars as drawings.
import bwip from "bwip-js/node";
import {create} from "qrcode";
import {cut, element} from "../../rulebooks/svg.ts";
import type {Drawing} from "./svg-page.ts";

/** Quiet zones in modules: ISO/IEC 18004 asks for 4 around a QR code, ISO/IEC 15417 for 10 on either side of Code 128. From memory. */
const [qrQuiet, barQuiet] = [4, 10];

/** A QR code with its quiet zone; level M mends what a crease of 15 in 100 takes away. */
export function qrCode(text: string, side: number, label: string): Drawing {
  const {modules: {size, data}} = create(text, {errorCorrectionLevel: "M"});
  const step = side / (size + 2 * qrQuiet);
  const runs: string[] = [];
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      if (!data[y * size + x]) continue;
      let end = x + 1;
      while (end < size && data[y * size + end]) end++;
      const [left, top, wide] = [(x + qrQuiet) * step, (y + qrQuiet) * step, (end - x) * step];
      runs.push(`M${fine(left)} ${fine(top)}h${fine(wide)}v${fine(step)}h${fine(-wide)}z`);
      x = end;
    }
  }
  return {width: side, height: side, label, inside: element("path", {d: runs.join(""), fill: "#000000"})};
}

/** Whether Code 128 can carry a text in a length that a hand scanner reads. */
export const fitsBars = (text: string): boolean => /^[\x20-\x7e]{1,24}$/.test(text);

/** Code 128 as wide as given, without the text below it. */
export function bars(text: string, width: number, height: number): Drawing {
  const [code] = bwip.raw({bcid: "code128", text}) as readonly {readonly sbs: readonly number[]}[];
  const modules = code!.sbs.reduce((sum, wide) => sum + wide, 0);
  const step = width / (modules + 2 * barQuiet);
  let at = barQuiet * step;
  const inside = code!.sbs.map((wide, i) => {
    const bar = i % 2 === 0 ? `M${fine(at)} 0h${fine(wide * step)}v${cut(height)}h${fine(-wide * step)}z` : "";
    at += wide * step;
    return bar;
  });
  return {width, height, label: `Code 128: ${text}`, inside: element("path", {d: inside.join(""), fill: "#000000"})};
}

/** Four figures behind the point: two would blur the edges of small modules. */
const fine = (value: number) => Math.round(value * 1e4) / 1e4;
