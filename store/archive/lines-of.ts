// Reads a file line by line without waiting, so that it can be done inside a transaction.
import {closeSync, openSync, readSync} from "node:fs";
import {StringDecoder} from "node:string_decoder";

/** @throws when a line is longer than any garment can be */
export function* linesOf(path: string, longest = 8_000_000): Generator<string> {
  const file = openSync(path, "r");
  try {
    const decoder = new StringDecoder("utf8");
    const buffer = Buffer.alloc(1_000_000);
    let rest = "";
    for (let read; (read = readSync(file, buffer, 0, buffer.length, null)) > 0; ) {
      const lines = (rest + decoder.write(buffer.subarray(0, read))).split("\n");
      rest = lines.pop()!;
      if (rest.length > longest) throw new Error("the line is too long");
      yield* lines;
    }
    rest += decoder.end();
    if (rest !== "") yield rest;
  } finally {
    closeSync(file);
  }
}
