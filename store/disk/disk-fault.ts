// Tells a disk that is full, closed or failing from a fault of the program, and says what to do about it.
import {StoreFault} from "../fault.ts";
import {diskFailing, diskFull, folderClosed} from "../problems.ts";

/** Codes of the system, numbers of SQLite (sqlite.org/rescode.html) and its words for them, where an error carries no number, that mean the same to the owner. */
const full: readonly unknown[] = ["ENOSPC", "EDQUOT", 13, "database or disk is full"];
const closed: readonly unknown[] = ["EACCES", "EPERM", "EROFS", 8, 14, 23, "attempt to write a readonly database", "unable to open database file"];
const failing: readonly unknown[] = ["EIO", 10, 11, 26, "disk I/O error", "database disk image is malformed", "file is not a database"];

/** A StoreFault in place of an error of the disk; any other error as it is. */
export function diskFault(error: unknown, folder: string): unknown {
  if (error instanceof StoreFault) return error;
  const {code, errcode, message} = (error ?? {}) as {code?: unknown; errcode?: unknown; message?: unknown};
  // Extended numbers carry the plain one in their last byte.
  const said = [code, typeof errcode === "number" ? errcode & 0xff : undefined, message];
  const isOf = (codes: readonly unknown[]) => said.some((one) => codes.includes(one));
  if (isOf(full)) return new StoreFault([diskFull(folder)]);
  if (isOf(closed)) return new StoreFault([folderClosed(folder, "no permission to write")]);
  return isOf(failing) ? new StoreFault([diskFailing(folder)]) : error;
}
