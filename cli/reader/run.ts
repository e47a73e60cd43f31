// ticking read: photos and folders, one after the other with one reader; broken ones are told and the others go on.
import {findingJson} from "../../commands/finding-json.ts";
import {unknownBook} from "../../commands/problems.ts";
import * as say from "../../commands/reading/problems.ts";
import type {World} from "../../commands/world.ts";
import {nearest, type Problem} from "../../engine/index.ts";
import {openPackagedReader} from "../../reader/node.ts";
import {NoReader, type LabelReader} from "../../reader/reader.ts";
import {exitCodes, NeedsMending, printProblems} from "../ending.ts";
import {openWorld} from "../shared.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import type {ReadFlags} from "./flags.ts";
import {makersOf, readOne, type OnePhoto} from "./one-photo.ts";
import {writePhoto} from "./page.ts";
import {photoPaths} from "./photo-paths.ts";

export async function runRead(paths: readonly string[], flags: ReadFlags): Promise<void> {
  const {photos, problems, folder} = photoPaths(paths);
  printProblems(problems);
  if (problems.length > 0) process.exitCode = exitCodes.mend;
  if (photos.length === 0) {
    if (problems.length === 0) throw new NeedsMending([say.noPhotos(paths.join(", "))]);
    return;
  }
  const world = openWorld(flags);
  const wrong = [...unknownMakers(world, flags), ...unknownKinds(world, flags)];
  if (wrong.length > 0) throw new NeedsMending(wrong);
  const several = folder || photos.length > 1;
  const reader = await opened();
  try {
    let failed = 0;
    for (const [i, path] of photos.entries()) {
      if (several && process.stderr.isTTY) process.stderr.write(`\r${i} of ${photos.length} photos read `);
      const one = await readOne(path, reader, world, flags);
      if (!one.reading) failed++;
      tell(one, flags, several);
    }
    if (several && process.stderr.isTTY) process.stderr.write(`\r${" ".repeat(40)}\r`);
    if (several) process.stderr.write(`${photos.length - failed} of ${photos.length} photos read\n`);
    if (failed === photos.length) process.exitCode = exitCodes.mend;
  } finally {
    await reader.close();
  }
}

function tell(one: OnePhoto, {json}: ReadFlags, several: boolean): void {
  if (json) {
    const {path, reading, says, problems, garment, finding} = one;
    return printJson({path, reading, problems, rows: says?.rows ?? [], marks: says?.marks ?? [], kinds: says?.kinds ?? [], ...(garment ? {garment} : {}), ...(finding ? {finding: findingJson(finding)} : {})}, several ? 0 : 2);
  }
  if (!one.reading) return printProblems(one.problems);
  const page = newPage();
  writePhoto(page, one);
  printPage(page);
}

async function opened(): Promise<LabelReader> {
  try {
    return await openPackagedReader();
  } catch (error) {
    if (error instanceof NoReader) throw new NeedsMending([error.problem]);
    throw error;
  }
}

function unknownMakers({books}: World, flags: ReadFlags): Problem[] {
  const makers = books.filter(({kind}) => kind === "maker").map(({book}) => book);
  return makersOf(flags).filter((id) => !makers.includes(id)).map((id) => unknownBook("--maker", id, makers, nearest(id, makers)));
}

function unknownKinds({books}: World, {label, ...flags}: ReadFlags): Problem[] {
  if (label === undefined) return [];
  const asked = makersOf(flags);
  const kinds = books.filter(({book, kind}) => kind === "maker" && (asked.length === 0 || asked.includes(book))).flatMap(({labels}) => Object.keys(labels?.kinds ?? {}));
  return kinds.includes(label) ? [] : [say.unknownKind(label, kinds)];
}
