// Draws the SVG of our own drawings into a PDF as vectors and real text: rect, circle, path, text and g, and nothing else.
import type {Face} from "../face/faces.ts";
import type {Pdf} from "./open-pdf.ts";

type Attributes = Readonly<Record<string, string>>;

const pieces = /<(\/?)([a-z]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)/g;

/**
 * @param markup  elements as rulebooks/svg.ts writes them
 * @param x       where its left edge goes
 * @param y       where its top edge goes
 * @param scale   points for one unit of the drawing
 * @throws Error for an element that it does not know: a drawing would be lost without a word
 */
export function drawSvg(pdf: Pdf, markup: string, x: number, y: number, scale = 1): void {
  const {doc} = pdf;
  doc.save();
  doc.translate(x, y);
  if (scale !== 1) doc.scale(scale);
  const groups: Attributes[] = [{}];
  let text: Attributes | null = null;
  for (const [, close, name, written = "", bare, between] of markup.matchAll(pieces)) {
    if (between !== undefined) {
      if (text) drawText(pdf, text, unescape(between));
      continue;
    }
    if (close) {
      if (name === "text") text = null;
      if (name === "g" && groups.pop()!.transform !== undefined) doc.restore();
      continue;
    }
    const own = attributesOf(written);
    const all = {...groups.at(-1)!, ...own};
    if (name === "g") {
      if (bare) continue;
      const {transform, ...kept} = all;
      groups.push(own.transform === undefined ? kept : {...kept, transform: own.transform});
      if (own.transform !== undefined) moved(pdf, own.transform);
    } else if (name === "text") text = bare ? null : all;
    else if (name === "title") text = null;
    else drawShape(pdf, name!, all);
  }
  doc.restore();
}

function moved({doc}: Pdf, transform: string): void {
  const [, move, across, down] = /^(translate|rotate)\(([-\d.]+)(?:[ ,]+([-\d.]+))?\)$/.exec(transform) ?? [];
  if (move === undefined) throw new Error(`drawings are moved and turned alone, not by “${transform}”`);
  doc.save();
  if (move === "translate") doc.translate(Number(across), Number(down ?? 0));
  else doc.rotate(Number(across));
}

function drawShape({doc}: Pdf, name: string, given: Attributes): void {
  const number = (key: string, usual = 0) => Number(given[key] ?? usual);
  const fill = given.fill === "none" ? null : (given.fill ?? (name === "path" && given.stroke ? null : "#000000"));
  const line = given.stroke && given.stroke !== "none" ? given.stroke : null;
  if (name === "rect") given.rx === undefined ? doc.rect(number("x"), number("y"), number("width"), number("height")) : doc.roundedRect(number("x"), number("y"), number("width"), number("height"), number("rx"));
  else if (name === "circle") doc.circle(number("cx"), number("cy"), number("r"));
  else if (name === "path") doc.path(given.d ?? "");
  else throw new Error(`a drawing holds <${name}>, which cannot be put on paper`);
  if (line) {
    doc.lineWidth(number("stroke-width", 1)).strokeColor(line, number("stroke-opacity", 1)).lineCap((given["stroke-linecap"] as "round" | undefined) ?? "butt");
    const dashes = given["stroke-dasharray"]?.split(/[ ,]+/).map(Number);
    dashes ? doc.dash(dashes[0]!, {space: dashes[1] ?? dashes[0]!}) : doc.undash();
  }
  if (fill) doc.fillColor(fill, number("fill-opacity", 1));
  if (fill && line) doc.fillAndStroke();
  else if (fill) doc.fill();
  else if (line) doc.stroke();
}

function drawText(pdf: Pdf, given: Attributes, text: string): void {
  const face = `${given["font-family"] === "serif" ? "serif" : "sans"}${given["font-weight"] === "bold" ? " bold" : ""}` as Face;
  pdf.doc.fillOpacity(1);
  pdf.words(text, Number(given.x ?? 0), Number(given.y ?? 0), {face, size: Number(given["font-size"] ?? 12), fill: given.fill ?? "#000000", anchor: (given["text-anchor"] as "middle" | undefined) ?? "start"});
}

function attributesOf(written: string): Attributes {
  return Object.fromEntries([...written.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, name, value]) => [name!, unescape(value!)]));
}

const unescape = (text: string) => text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));
