// Reads square codes and bars on a rendered page with a reader from outside the project (zxing-cpp, Apache licence); its program is given to it, so that nothing is fetched.
import {readFileSync} from "node:fs";
import {createRequire} from "node:module";
import {prepareZXingModule, readBarcodes} from "zxing-wasm/reader";

const wasm = createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm");
prepareZXingModule({overrides: {wasmBinary: new Uint8Array(readFileSync(wasm)).buffer as ArrayBuffer}});

export interface ReadOff {
  readonly format: string;
  readonly text: string;
}

export async function codesIn({data, width, height}: {readonly data: Uint8Array; readonly width: number; readonly height: number}): Promise<ReadOff[]> {
  const image = {data: new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.byteLength), width, height, colorSpace: "srgb"} as unknown as Parameters<typeof readBarcodes>[0];
  const found = await readBarcodes(image, {formats: ["QRCode", "Code128"], tryHarder: true, maxNumberOfSymbols: 64});
  return found.filter(({isValid}) => isValid).map(({format, text}) => ({format: String(format), text}));
}
