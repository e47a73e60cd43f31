#!/usr/bin/env node
// The command. Runs the compiled code when it is there, else the TypeScript source.
import fs from "node:fs";

const compiled = new URL("../dist/cli/main.js", import.meta.url);
if (fs.existsSync(compiled)) {
  await import(compiled.href);
} else {
  const {register} = await import("tsx/esm/api");
  register();
  await import(new URL("../cli/main.ts", import.meta.url).href);
}
