// Errors of the disk, told apart by code, number or words; others stay as they are.
import {expect, test} from "vitest";
import {diskFault} from "../../store/disk/disk-fault.ts";
import {StoreFault} from "../../store/fault.ts";

const error = (message: string, more: object) => Object.assign(new Error(message), more);
const codeOf = (given: unknown) => {
  const fault = diskFault(given, "shop");
  return fault instanceof StoreFault ? fault.problems.map(({code}) => code) : fault;
};

test.each([
  [error("", {code: "ENOSPC"}), "store/disk-full"],
  [error("", {code: "EDQUOT"}), "store/disk-full"],
  [error("", {code: "ERR_SQLITE_ERROR", errcode: 13}), "store/disk-full"],
  [error("database or disk is full", {}), "store/disk-full"],
  [error("", {code: "EROFS"}), "store/folder-closed"],
  // SQLITE_READONLY_DBMOVED is 8 | 4 << 8. Source: sqlite.org/rescode.html.
  [error("", {errcode: 1032}), "store/folder-closed"],
  [error("", {code: "EIO"}), "store/disk-failing"],
  // SQLITE_IOERR_WRITE is 10 | 3 << 8. Source: sqlite.org/rescode.html.
  [error("", {errcode: 778}), "store/disk-failing"],
  [error("database disk image is malformed", {}), "store/disk-failing"],
])("%#: %s is %s", (given, code) => {
  expect(codeOf(given)).toEqual([code]);
});

test("whatever is no error of the disk stays what it is", () => {
  // 1 is SQLITE_ERROR: a slip in a statement, which is a fault of the program.
  for (const given of [error("no such table", {code: "ERR_SQLITE_ERROR", errcode: 1}), error("", {code: "ENOENT"}), null, "text", new StoreFault([])]) expect(diskFault(given, "shop")).toBe(given);
});
