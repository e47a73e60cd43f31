// What a browser has to fetch: the engine and the compiled public book, minified and compressed.
import {gzipSync} from "node:zlib";
import {fileURLToPath} from "node:url";
import {build} from "esbuild";
import type {Book} from "../engine/index.ts";
import type {Line} from "./line.ts";

export async function measureBrowserSize(books: readonly Book[]): Promise<Line[]> {
  const entry = fileURLToPath(new URL("../engine/index.ts", import.meta.url));
  const {outputFiles} = await build({entryPoints: [entry], bundle: true, write: false, minify: true, format: "esm", platform: "browser", logLevel: "silent"});
  const code = outputFiles[0]!.contents;
  const open = Buffer.from(JSON.stringify(books.filter(({kind}) => kind === "public")));
  const kilobytes = (bytes: Uint8Array) => gzipSync(bytes, {level: 9}).length / 1000;
  const [engine, book] = [kilobytes(code), kilobytes(open)];
  return [
    {name: "browser, engine and public book, compressed", value: engine + book, unit: "kB", most: 150, note: `engine ${engine.toFixed(1)} kB, book ${book.toFixed(1)} kB; ${Math.round(code.length / 1000)} and ${Math.round(open.length / 1000)} kB before compression`},
  ];
}
