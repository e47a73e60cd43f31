// Tells a disk that is full, closed or failing from a fault of the program, and says what to do about it.
import {StoreFault} from "../fault.ts";
import {diskFailing, diskFull, folderClosed} from "../problems.ts";

/** Codes of the system and numbers of SQLite (sqlite.org/rescode.html) that mean the same to the owner. */
const full: readonly unknown[] = ["ENOSPC", "EDQUOT", 13];
const closed: readonly unknown[] = ["EACCES", "EPERM", "EROFS", 8, 14, 23];
const failing: readonly unknown[] = ["EIO", 10, 11, 26];

/** A StoreFault in place of an error of the disk; any other error as it is. */
export function diskFault(error: unknown, folder: string): unknown {
  if (error instanceof StoreFault) return error;
  const {code, errcode} = (error ?? {}) as {code?: unknown; errcode?: unknown};
  // Extended numbers carry the plain one in their last byte.
  const said = [code, typeof errcode === "number" ? errcode & 0xff : undefined];
  const isOf = (codes: readonly unknown[]) => said.some((one) => codes.includes(one));
  if (isOf(full)) return new StoreFault([diskFull(folder)]);
  if (isOf(closed)) return new StoreFault([folderClosed(folder, "no permission to write")]);
  return isOf(failing) ? new StoreFault([diskFailing(folder)]) : error;
}
