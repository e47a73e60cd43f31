// Finished papers that wait to be fetched: in a folder of the system for things that may go, for an hour.
import {randomBytes} from "node:crypto";
import {mkdtemp, readdir, readFile, rm, stat, writeFile} from "node:fs/promises";
import {tmpdir} from "node:os";
import {join} from "node:path";

export interface PaperFiles {
  /** @returns the name under which it is fetched */
  keep(beginning: string, ending: string, bytes: Uint8Array | string): Promise<string>;
  /** Null when it is not there any more. */
  read(name: string): Promise<Buffer | null>;
  close(): Promise<void>;
}

const hour = 3_600_000;
const names = /^[a-z0-9-]{1,60}\.[a-z]{2,4}$/;

export function paperFiles(): PaperFiles {
  let folder: Promise<string> | null = null;
  const open = () => (folder ??= mkdtemp(join(tmpdir(), "ticking-papers-")));
  return {
    async keep(beginning, ending, bytes) {
      const into = await open();
      for (const name of await readdir(into)) {
        const old = await stat(join(into, name)).catch(() => null);
        if (old && Date.now() - old.mtimeMs > hour) await rm(join(into, name), {force: true});
      }
      const name = `${beginning}-${randomBytes(6).toString("hex")}.${ending}`;
      await writeFile(join(into, name), bytes);
      return name;
    },
    async read(name) {
      if (!names.test(name) || folder === null) return null;
      return readFile(join(await folder, name)).catch(() => null);
    },
    async close() {
      if (folder) await rm(await folder, {recursive: true, force: true});
      folder = null;
    },
  };
}
