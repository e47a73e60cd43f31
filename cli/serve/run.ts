// Runs ticking serve: opens the rack, starts the server, says where it is, and ends it cleanly when asked to stop.
import {existsSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {demoGarments, demoShop, shippedBooks} from "../../rulebooks/load.ts";
import {isLoopback} from "../../server/listen.ts";
import {startServer, type Started} from "../../server/start.ts";
import {StoreFault} from "../../store/fault.ts";
import type {Store} from "../../store/store.ts";
import {dataFolder} from "../data-folder.ts";
import {NeedsMending} from "../ending.ts";
import {notAddress, notPort, portTaken} from "../problems.ts";
import {version} from "../version.ts";
import {addressesOf} from "./addresses.ts";
import {openBrowser} from "./open-browser.ts";
import {passphraseFor} from "./passphrase.ts";

export interface ServeFlags {
  readonly data?: string;
  readonly port: string;
  readonly listen: string;
  readonly name?: readonly string[];
  readonly passphraseFile?: string;
  readonly open?: boolean;
}

export async function runServe({data, port: wanted, listen: address, name: names = [], passphraseFile, open}: ServeFlags): Promise<void> {
  const port = portOf(wanted);
  const shipped = shippedBooks();
  if (shipped.problems) throw new NeedsMending(shipped.problems);
  const folder = dataFolder(data);
  const wide = !isLoopback(address) || names.length > 0;
  const passphraseHash = wide ? (store: Store) => passphraseFor(store, passphraseFile, names[0] ?? address) : undefined;
  const started = await startServer({folder, shipped: shipped.books, demo: demoGarments(), demoShop: demoShop(), address, port, names, wide, passphraseHash, screens: screensFolder(), version: version(), onFault: printFault}).catch((error: unknown) => {
    throw mendable(error, address, port);
  });
  say(started, folder, names);
  if (open) openBrowser(addressesOf(address, started.port, [])[0]!);
  await stopAsked();
  process.stderr.write("Stopping ...\n");
  await started.close();
}

function say({port, address}: Started, folder: string, names: readonly string[]): void {
  process.stdout.write(`The rack in ${folder} is served at\n${addressesOf(address, port, names).map((one) => `  ${one}\n`).join("")}Stop it with Ctrl-C.\n`);
}

/** Resolves when the process is asked to stop; a second time it ends at once. */
function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      process.once(signal, () => {
        process.once(signal, () => process.exit(1));
        resolve();
      });
    }
  });
}

// Compiled code stands one folder deeper than the source.
function screensFolder(): string {
  const [source, compiled] = ["../../dist-web", "../../../dist-web"].map((path) => fileURLToPath(new URL(path, import.meta.url)));
  return existsSync(source!) ? source! : existsSync(compiled!) ? compiled! : source!;
}

function portOf(given: string): number {
  const port = Number(given);
  if (!/^\d{1,5}$/.test(given) || port > 65_535) throw new NeedsMending([notPort(given)]);
  return port;
}

function mendable(error: unknown, address: string, port: number): unknown {
  if (error instanceof StoreFault) return new NeedsMending(error.problems);
  const {code} = error as NodeJS.ErrnoException;
  if (code === "EADDRINUSE") return new NeedsMending([portTaken(port)]);
  if (code === "EACCES" || code === "EADDRNOTAVAIL" || code === "ENOTFOUND" || code === "EINVAL") return new NeedsMending([notAddress(address, code)]);
  return error;
}

function printFault(error: unknown): void {
  process.stderr.write(`${new Date().toISOString()} something went wrong inside: ${error instanceof Error ? (process.env.TICKING_DEBUG === "1" ? error.stack : error.message) : String(error)}\n`);
}
