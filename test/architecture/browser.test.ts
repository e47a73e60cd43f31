// The engine must run in a browser as it is: bundled for one, it needs nothing of node and nothing from outside.
import {fileURLToPath} from "node:url";
import {build} from "esbuild";
import {expect, test} from "vitest";

const bundle = (entry: string) =>
  build({entryPoints: [fileURLToPath(new URL(`../../${entry}`, import.meta.url))], bundle: true, write: false, metafile: true, minify: true, format: "esm", platform: "browser", logLevel: "silent"});

test("the engine bundles for a browser without a built-in of node", async () => {
  const {metafile, outputFiles} = await bundle("engine/index.ts");
  expect(Object.values(metafile.outputs).flatMap(({imports}) => imports)).toEqual([]);
  expect(outputFiles[0]!.text).not.toMatch(/\bnode:|\brequire\(/);
});

test("the check would see a built-in: the loader of the rule books does not bundle", async () => {
  await expect(bundle("rulebooks/load.ts")).rejects.toThrow(/node:fs/);
});
