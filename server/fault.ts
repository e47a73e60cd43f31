// What is said of an error that nobody foresaw: when the disk is full or closed that is said, and nothing of our own insides in any case.
import {diskFault} from "../store/disk/disk-fault.ts";
import {StoreFault} from "../store/fault.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";

export function faultOf(error: unknown): Refused {
  const told = diskFault(error, "the data folder");
  return told instanceof StoreFault ? new Refused(507, told.problems) : new Refused(500, [say.ourFault()]);
}
