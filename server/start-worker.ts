// Starts a worker thread from a source file or its compiled form.
import {Worker} from "node:worker_threads";

/**
 * Compiled code runs as it is; TypeScript source needs its loader inside the worker, too.
 * @param entry  address of the file as source: new URL("./worker.ts", import.meta.url)
 */
export function startWorker(entry: URL, workerData: unknown): Worker {
  if (!import.meta.url.endsWith(".ts")) return new Worker(new URL(entry.href.replace(/\.ts$/, ".js")), {workerData});
  const loader = import.meta.resolve("tsx/esm/api");
  const code = `import(${JSON.stringify(loader)}).then(({register}) => { register(); return import(${JSON.stringify(entry.href)}); });`;
  return new Worker(code, {eval: true, workerData});
}
