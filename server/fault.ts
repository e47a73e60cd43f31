// What is said of an error that nobody foresaw: when the disk is full or closed that is said, and nothing of our own insides in any case.
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {StoreFault} from "../store/fault.ts";

const disk: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full", SQLITE_FULL: "the disk is full", EDQUOT: "the disk is full",
  EACCES: "no permission", EPERM: "no permission", EROFS: "the folder is read-only", SQLITE_READONLY: "the folder is read-only", SQLITE_CANTOPEN: "the file cannot be opened", SQLITE_IOERR: "the disk gives errors",
};

export function faultOf(error: unknown): Refused {
  if (error instanceof StoreFault) return new Refused(507, error.problems);
  const {code} = (error ?? {}) as {code?: unknown};
  const reason = typeof code === "string" ? Object.entries(disk).find(([name]) => code.startsWith(name))?.[1] : undefined;
  return reason ? new Refused(507, [say.cannotKeep(reason)]) : new Refused(500, [say.ourFault()]);
}
