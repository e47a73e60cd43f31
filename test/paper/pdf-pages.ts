// Opens a PDF with a renderer from outside the project (PDFium, BSD and Apache licences): text and pixels of each page.
import {readFileSync} from "node:fs";
import {createRequire} from "node:module";
import {PDFiumLibrary} from "@hyzyla/pdfium";

export interface OpenedPage {
  readonly text: string;
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** Red, green, blue and a byte that says nothing, row by row. */
  render(scale: number): Promise<{readonly data: Uint8Array; readonly width: number; readonly height: number}>;
}

const wasm = createRequire(import.meta.url).resolve("@hyzyla/pdfium/pdfium.wasm");
let library: Promise<PDFiumLibrary> | null = null;

export async function pagesOf(bytes: Uint8Array): Promise<OpenedPage[]> {
  const opened = await (library ??= PDFiumLibrary.init({wasmBinary: new Uint8Array(readFileSync(wasm)).buffer as ArrayBuffer}));
  const document = await opened.loadDocument(bytes);
  return [...document.pages()].map((page) => {
    const {originalWidth: width, originalHeight: height} = page.getOriginalSize();
    return {
      text: page.getText().replaceAll("\u0000", "").replace(/\s+/g, " "),
      width,
      height,
      async render(scale) {
        const {data, width: wide, height: high} = await page.render({scale, render: "bitmap"});
        // PDFium gives blue, green, red.
        const rgba = new Uint8Array(data);
        for (let i = 0; i < rgba.length; i += 4) [rgba[i], rgba[i + 2], rgba[i + 3]] = [rgba[i + 2]!, rgba[i]!, 255];
        return {data: rgba, width: wide, height: high};
      },
    };
  });
}
