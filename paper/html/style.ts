// The look of papers as web pages, on a screen and in print.
import {webFace} from "../face/faces.ts";

const screenFaces = `--paper-serif: "Source Serif 4 Variable", "Paper Serif", "Iowan Old Style", Georgia, serif; --paper-sans: "Instrument Sans Variable", "Paper Sans", "Segoe UI", system-ui, sans-serif;`;

/** Paper is white by day and by night: what is shown is what is printed. */
export const sheetStyle = `
@page { margin: 14mm 14mm 16mm; }
.dating-sheet { ${screenFaces} background: #fff; color: #1f2d4d; font: 400 0.9rem/1.4 var(--paper-sans); max-width: 50rem; padding: clamp(1rem, 4vw, 2.6rem); margin: 0 auto; font-variant-numeric: tabular-nums; overflow-wrap: break-word; color-scheme: light; }
.dating-sheet *, .dating-sheet *::before { box-sizing: border-box; }
.dating-sheet :is(h1, h2, h3, p, ul, dl, dd, figure) { margin: 0; padding: 0; }
.dating-sheet ul { list-style: none; }
.dating-sheet svg, .dating-sheet img { max-width: 100%; height: auto; display: block; }
.dating-sheet svg { font-family: var(--paper-sans); }
.dating-sheet svg [font-family="serif"] { font-family: var(--paper-serif); }
.dating-sheet header { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0.2rem 1rem; border-bottom: 2px dashed #b0741c; padding-bottom: 0.5rem; margin-bottom: 1rem; font-size: 0.86rem; }
.dating-sheet header p:last-child { text-align: right; }
.dating-sheet .quiet { color: #535a6b; }
.dating-sheet .top { display: flex; flex-wrap: wrap; gap: 1rem 1.6rem; align-items: start; }
.dating-sheet .top > div { flex: 1 1 16rem; }
.dating-sheet .top > figure { flex: 0 1 14rem; }
.dating-sheet h1 { font: 600 1.1rem/1.3 var(--paper-sans); letter-spacing: 0; }
.dating-sheet h2 { font: 600 1rem/1.3 var(--paper-sans); margin-top: 1.3rem; letter-spacing: 0; }
.dating-sheet .lead { margin-top: 0.8rem; }
.dating-sheet .verdict { font: 400 clamp(1.9rem, 7vw, 2.7rem)/1.1 var(--paper-serif); margin: 0.1rem 0 0.3rem; }
.dating-sheet .odds { font-weight: 600; }
.dating-sheet .ribbon { margin: 1.2rem 0 0.6rem; overflow-x: auto; }
.dating-sheet .ribbon svg { min-width: 34rem; width: 100%; }
.dating-sheet .odd { border-left: 3px dashed #b0741c; padding-left: 0.8rem; }
.dating-sheet .odd h2 { margin-top: 0.8rem; color: #845208; }
.dating-sheet .marks li { margin-top: 0.7rem; break-inside: avoid; }
.dating-sheet .marks h3 { font: 600 0.92rem/1.35 var(--paper-sans); display: flex; gap: 1rem; justify-content: space-between; align-items: baseline; letter-spacing: 0; }
.dating-sheet .marks h3 svg { flex: none; margin-top: 0.4rem; }
.dating-sheet .marks p { font-size: 0.84rem; color: #535a6b; }
.dating-sheet .columns { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr)); gap: 0 1.6rem; }
.dating-sheet dl > div { display: grid; grid-template-columns: 9.5rem 1fr; gap: 0.6rem; padding: 0.12rem 0; break-inside: avoid; }
.dating-sheet dt { color: #535a6b; }
.dating-sheet .photos { display: flex; flex-wrap: wrap; gap: 0.7rem; margin-top: 0.4rem; }
.dating-sheet .photos figure { flex: 0 1 11rem; break-inside: avoid; }
.dating-sheet figcaption { font-size: 0.8rem; color: #535a6b; margin-top: 0.2rem; }
.dating-sheet footer { display: flex; flex-wrap: wrap-reverse; gap: 0.8rem 1.4rem; align-items: start; border-top: 2px dashed #b0741c; margin-top: 1.4rem; padding-top: 0.7rem; font-size: 0.8rem; color: #535a6b; break-inside: avoid; }
.dating-sheet footer > div { flex: 1 1 18rem; display: grid; gap: 0.25rem; }
.dating-sheet footer figure { flex: none; width: 8.2rem; text-align: center; }
.dating-sheet footer figcaption { color: #1f2d4d; font-weight: 600; }
@media print { .dating-sheet { max-width: none; padding: 0; font-size: 9.4pt; } .dating-sheet .ribbon { overflow: visible; } .dating-sheet .ribbon svg { min-width: 0; } }
`;

/** The two faces inside the page, for a file that has to look the same anywhere. */
export function faceStyle(): string {
  const face = (name: string, weight: number, bytes: Buffer) => `@font-face { font-family: "${name}"; font-weight: ${weight}; src: url(data:font/woff2;base64,${bytes.toString("base64")}) format("woff2"); }`;
  return [face("Paper Serif", 400, webFace("serif")), face("Paper Sans", 400, webFace("sans")), face("Paper Sans", 600, webFace("sans bold"))].join("\n");
}
