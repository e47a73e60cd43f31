// Where text goes: stdout or a file that appears under its name only when it is whole. Waits while the reader is slow.
import {createWriteStream, lstatSync, renameSync} from "node:fs";
import {once} from "node:events";
import {NeedsMending} from "../ending.ts";
import {notWritten} from "../problems.ts";

export interface Sink {
  write(text: string): Promise<void>;
  /** Ends the text; a file gets its name now. */
  end(): Promise<void>;
}

/** @param path  stdout when left out */
export async function openSink(path: string | undefined): Promise<Sink> {
  if (path === undefined) {
    return {
      write: async (text) => {
        if (text !== "" && !process.stdout.write(text)) await once(process.stdout, "drain");
      },
      end: async () => {},
    };
  }
  const special = lstatSync(path, {throwIfNoEntry: false})?.isFile() === false;
  const part = special ? path : `${path}.part`;
  const stream = createWriteStream(part);
  const fail = (error: unknown) => new NeedsMending([notWritten(path, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  let broken: unknown = null;
  stream.on("error", (error) => (broken = error));
  await once(stream, "open").catch((error: unknown) => Promise.reject(fail(error)));
  return {
    async write(text) {
      if (broken) throw fail(broken);
      if (text !== "" && !stream.write(text)) await once(stream, "drain").catch((error: unknown) => Promise.reject(fail(error)));
    },
    async end() {
      await new Promise<void>((resolve, reject) => {
        stream.once("error", (error) => reject(fail(error)));
        stream.end(resolve);
      });
      if (!special) renameSync(part, path);
    },
  };
}
