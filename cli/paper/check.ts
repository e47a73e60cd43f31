// ticking paper check.
import {readFileSync} from "node:fs";
import {dateAll} from "../../commands/rack/rack.ts";
import type {Garment} from "../../engine/index.ts";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import {checkCode, checkSchema} from "../../paper/check-code.ts";
import * as say from "../../paper/problems.ts";
import {NeedsMending} from "../ending.ts";
import {instantNow} from "../clock.ts";
import {openWorld} from "../shared.ts";
import {notFound, notOpened} from "../problems.ts";
import {withRack, type RackFlags} from "../rack/with-rack.ts";
import {newPage, printJson, printPage} from "../words/print.ts";

interface Flags extends RackFlags {
  readonly number?: string;
  readonly on?: string;
  readonly record?: string;
  readonly json?: boolean;
}

export async function checkPaper(code: string, flags: Flags): Promise<void> {
  const {number, on, record} = flags;
  const given = {code, ...(number === undefined ? {} : {number}), ...(on === undefined ? {} : {on}), ...(record === undefined ? {} : {record: readRecord(record)})};
  const {fits, problems} = checkShape(checkSchema, given, (path) => `--${printPath(path)}`);
  if (problems) throw new NeedsMending(problems);
  // A file is compared without a rack, so that a buyer can do it, too.
  const {answer, problems: wrong} = record === undefined ? await withRack(flags, false, (rack) => checkCode(fits, rack)) : await checkCode(fits, {store: null, date: dateByShipped});
  if (wrong) throw new NeedsMending(wrong);
  if (flags.json) return printJson(answer);
  const page = newPage();
  page.say(answer.words, answer.result === "differs" ? "odd" : "strong");
  page.say(`Sheet of ${answer.garment.number}, ${answer.on}.`, "quiet");
  printPage(page);
}

async function dateByShipped(garments: readonly Garment[]) {
  return dateAll(garments, openWorld({}), instantNow());
}

function readRecord(file: string): unknown {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    const {code = "unknown reason"} = error as NodeJS.ErrnoException;
    throw new NeedsMending([code === "ENOENT" ? notFound(file) : notOpened(file, code)]);
  }
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new NeedsMending([say.notRecord((error as Error).message.slice(0, 120))]);
  }
}
