// Writes zip files as nobody should: any names, any claims about size. Source of the form: PKWARE APPNOTE.TXT 6.3.10, 4.3.
import {crc32, deflateRawSync} from "node:zlib";

export interface RawEntry {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly packed?: boolean;
  /** Claimed in place of the true size. */
  readonly size?: number;
}

export function rawZip(entries: readonly RawEntry[]): Buffer {
  const locals: Buffer[] = [];
  const centrals: Buffer[] = [];
  let offset = 0;
  for (const {name, bytes, packed = false, size = bytes.length} of entries) {
    const data = packed ? deflateRawSync(bytes) : Buffer.from(bytes);
    const called = Buffer.from(name);
    const head = Buffer.alloc(26);
    head.writeUInt16LE(20, 0);
    head.writeUInt16LE(0x800, 2);
    head.writeUInt16LE(packed ? 8 : 0, 4);
    head.writeUInt16LE(0x21, 8);
    head.writeUInt32LE(crc32(bytes), 10);
    head.writeUInt32LE(data.length, 14);
    head.writeUInt32LE(size, 18);
    head.writeUInt16LE(called.length, 22);
    const local = Buffer.concat([Buffer.from("PK\x03\x04", "latin1"), head, called, data]);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(offset, 10);
    centrals.push(Buffer.concat([Buffer.from("PK\x01\x02\x14\x03", "latin1"), head, tail, called]));
    locals.push(local);
    offset += local.length;
  }
  const central = Buffer.concat(centrals);
  const end = Buffer.alloc(22);
  end.write("PK\x05\x06", "latin1");
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...locals, central, end]);
}
