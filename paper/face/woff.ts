// Unpacks a web font to the plain form once, as every document that embeds it would have to do so again.
import {inflateSync} from "node:zlib";

/** Bytes of the header and of an entry of the table directory, in either form. Source: W3C, WOFF File Format 1.0, sections 3 and 4; OpenType 1.9, table directory. */
const [woffHead, woffEntry, plainHead, plainEntry] = [44, 20, 12, 16];

/** The sfnt font inside a WOFF 1.0 file. */
export function unpackWoff(woff: Buffer): Buffer {
  if (woff.toString("latin1", 0, 4) !== "wOFF") throw new Error("this is no WOFF file");
  const count = woff.readUInt16BE(12);
  const power = Math.floor(Math.log2(count));
  const head = Buffer.alloc(plainHead + plainEntry * count);
  woff.copy(head, 0, 4, 8);
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(2 ** power * plainEntry, 6);
  head.writeUInt16BE(power, 8);
  head.writeUInt16BE((count - 2 ** power) * plainEntry, 10);
  const tables: Buffer[] = [];
  let at = head.length;
  for (let i = 0; i < count; i++) {
    const entry = woffHead + woffEntry * i;
    const [from, packed, length] = [4, 8, 12].map((offset) => woff.readUInt32BE(entry + offset)) as [number, number, number];
    const bytes = woff.subarray(from, from + packed);
    const table = packed < length ? inflateSync(bytes) : bytes;
    const into = plainHead + plainEntry * i;
    woff.copy(head, into, entry, entry + 4);
    woff.copy(head, into + 4, entry + 16, entry + 20);
    head.writeUInt32BE(at, into + 8);
    head.writeUInt32BE(length, into + 12);
    tables.push(table, Buffer.alloc(-length & 3));
    at += length + (-length & 3);
  }
  return Buffer.concat([head, ...tables]);
}
