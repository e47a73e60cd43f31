// A dating sheet as a web page that prints well: the same words, drawings and code as on the PDF.
import {qrCode} from "../draw/codes.ts";
import {svgOf} from "../draw/svg-page.ts";
import {yearRibbon} from "../draw/year-ribbon.ts";
import {weightStitches} from "../draw/weight.ts";
import {escapeXml as escaped} from "../../rulebooks/svg.ts";
import type {Entry, Evidence, Sheet, SheetPhoto} from "../sheet/sheet.ts";
import {faceStyle, sheetStyle} from "./style.ts";

export interface HtmlOptions {
  /** The address of a photo: a path of the server, or the bytes themselves; null: it went missing. */
  readonly addressOf: (photo: string) => string | null;
  /** The address of the style; null: it stands in the page, with its typefaces. */
  readonly styleAt: string | null;
}

/** A whole page. */
export function sheetPage(sheet: Sheet, {addressOf, styleAt}: HtmlOptions): string {
  const style = styleAt === null ? `<style>${faceStyle()}\n${sheetStyle}\nbody { margin: 0; }</style>` : `<link rel="stylesheet" href="${escaped(styleAt)}">`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Dating sheet ${escaped(sheet.number)}</title>
${style}
</head>
<body>
${sheetArticle(sheet, addressOf)}
</body>
</html>
`;
}

/** The sheet alone. */
function sheetArticle(sheet: Sheet, addressOf: HtmlOptions["addressOf"]): string {
  const {number, on, owner, garment, verdict, ribbon, odd, evidence, measures, state, photos, worth, cautions, estimate, books, code} = sheet;
  const shown = photos.filter(({photo}) => addressOf(photo) !== null);
  const [cover, ...others] = shown;
  const lines = (list: readonly string[], name = "") => list.map((line) => p(line, name)).join("\n");
  return `<main class="dating-sheet">
<header><div>${owner.map((line, i) => (i === 0 ? `<p><b>${escaped(line)}</b></p>` : p(line, "quiet"))).join("")}</div><p><b>Dating sheet ${escaped(number)}</b><br><span class="quiet">${on}</span></p></header>
<div class="top"><div>
<h1>${escaped(garment.number)}${garment.title === "" ? "" : ` · ${escaped(garment.title)}`}</h1>
${garment.about === "" ? "" : p(garment.about, "quiet")}
${p(verdict.lead, "lead quiet")}
${p(verdict.words, "verdict")}
${verdict.odds === "" ? "" : p(verdict.odds, "odds")}
${lines(verdict.bounds)}
</div>${cover ? figure(cover, addressOf) : ""}</div>
<div class="ribbon" tabindex="0" role="region" aria-label="Months">${svgOf(yearRibbon(ribbon.months, ribbon.threads, 511, ribbon.label))}</div>
${odd.length === 0 ? "" : `<section class="odd"><h2>${odd.length === 1 ? "What does not fit" : `${odd.length} things that do not fit`}</h2>${lines(odd)}</section>`}
${evidence.length === 0 ? "" : `<section><h2>What the date rests on</h2>${p("The more stitches, the more a mark tells.", "quiet")}<ul class="marks">${evidence.map(mark).join("\n")}</ul></section>`}
<div class="columns">${entries("Measurements", measures)}${entries("State", state)}</div>
${worth === null ? "" : `<section><h2>Worth, as an estimate</h2>${p(worth)}</section>`}
${others.length === 0 ? "" : `<section><h2>Photos</h2><div class="photos">${others.map((photo) => figure(photo, addressOf)).join("")}</div></section>`}
<footer><div>${lines([estimate, ...cautions, books, code.how])}</div><figure>${svgOf(qrCode(code.text, 128, `QR code with the fingerprint of sheet ${number}`))}<figcaption>${code.short}</figcaption></figure></footer>
</main>`;
}

const p = (words: string, name = "") => `<p${name === "" ? "" : ` class="${name}"`}>${escaped(words)}</p>`;

function mark({name, seen, weight, note, lines}: Evidence): string {
  return `<li><h3><span>${escaped(`${name}${seen === null ? "" : `: ${seen}`}${note === null ? "" : ` (${note})`}`)}</span>${svgOf(weightStitches(weight))}</h3>${lines.map((line) => p(line)).join("")}</li>`;
}

/** A name that is left empty goes on from the one before. */
function entries(head: string, list: readonly Entry[]): string {
  if (list.length === 0) return "";
  return `<section><h2>${head}</h2><dl>${list.map(({name, text}, i) => `<div><dt>${escaped(name === "" ? (list.slice(0, i).findLast((one) => one.name !== "")?.name ?? "") : name)}</dt><dd>${escaped(text)}</dd></div>`).join("")}</dl></section>`;
}

function figure(photo: SheetPhoto, addressOf: HtmlOptions["addressOf"]): string {
  const words = photo.caption === "" ? "the garment" : photo.caption;
  return `<figure><img src="${escaped(addressOf(photo.photo)!)}" alt="${escaped(`Photo: ${words}`)}">${photo.caption === "" ? "" : `<figcaption>${escaped(photo.caption)}</figcaption>`}</figure>`;
}
