// ticking sizes: what a garment measures, whether that hangs together, and what the tape says to its tag.
import {Option, type Command} from "commander";
import {perform} from "../../commands/command.ts";
import {measureGarment, type MeasuredAnswer} from "../../commands/state/measure-garment.ts";
import {unknownPoint} from "../../commands/state/problems.ts";
import {printProblem} from "../../engine/index.ts";
import {sayCloth} from "../../state/cloth.ts";
import {kindNames, kindOf} from "../../state/garment-kind.ts";
import {sizesSchema, type Sizes} from "../../state/model.ts";
import {pointsOf} from "../../state/point.ts";
import {readTagSize} from "../../state/tag-size.ts";
import type {Content} from "../../store/model.ts";
import {dataHelp} from "../data-folder.ts";
import {NeedsMending, orMend} from "../ending.ts";
import {examples} from "../help.ts";
import type {RackFlags} from "../rack/with-rack.ts";
import {collected, verb} from "../shared.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {named, noBooks} from "./named.ts";
import {note} from "./note.ts";

interface Flags extends RackFlags {
  readonly lay?: readonly string[];
  readonly tag?: string;
  readonly unit: "in" | "cm";
  readonly json?: boolean;
}

export function sizesVerb(): Command {
  return verb("sizes", measureGarment.summary)
    .argument("<garment...>", "numbers on the rack, or a file that ticking rack export wrote")
    .option("--lay <point=length>", "note a length at a point of measure, as on the tape: inseam=31 1/2; an empty one takes it out (repeatable)", collected)
    .option("--tag <text>", "note the size on the tag, like W 34 L 32")
    .addOption(new Option("--unit <unit>", "of lengths that carry none").choices(["in", "cm"]).default("in"))
    .option("--json", "answer as JSON, one garment a line")
    .option("--who <name>", "who makes the change, for the history; owner when left out")
    .addOption(new Option("--data <folder>", dataHelp))
    .addHelpText("after", examples("ticking sizes 0147", 'ticking sizes 0147 --lay waist=17 --lay "inseam=31 1/2" --tag "W 34 L 32"', "ticking sizes 0147 --json"))
    .action(run);
}

async function run(names: readonly string[], flags: Flags): Promise<void> {
  if (flags.lay || flags.tag !== undefined) await note(names, flags, (content) => ({sizes: laid(content, flags)}), "measured");
  const found = await named(names, flags);
  const page = newPage();
  for (const {subject} of found) {
    const answer = orMend(perform(measureGarment, {of: subject}, noBooks()));
    if (flags.json) printJson({garment: subject.name, ...answer}, 0);
    else writeSizes(page, subject.name, answer);
  }
  printPage(page);
}

/** Every slip of the flags is told before anything is kept. */
function laid({garment, sizes}: Content, {lay = [], tag, unit}: Flags): Sizes {
  const kind = kindOf(garment.type);
  const known = pointsOf(kind).map(({id}) => id);
  const now = sizes ?? sizesSchema.parse({});
  const typed = lay.map((one) => ({point: one.slice(0, Math.max(0, one.indexOf("="))).trim(), typed: one.slice(one.indexOf("=") + 1).trim().slice(0, 20), one}));
  const strange = typed.filter(({point}) => !known.includes(point));
  if (strange.length > 0) throw new NeedsMending(strange.map(({one}) => unknownPoint("--lay", one, known)));
  const rest = now.measures.filter(({point}) => !typed.some((one) => one.point === point));
  const measures = [...rest, ...typed.filter((one) => one.typed !== "").map((one) => ({point: one.point, length: {typed: one.typed, unit}}))];
  return {...now, measures, tag: tag === undefined ? now.tag : tag === "" ? null : readTagSize(tag.slice(0, 200), kind)};
}

function writeSizes(page: ReturnType<typeof newPage>, name: string, {kind, points, open, doubts, tag, odd, cloth}: MeasuredAnswer): void {
  page.head(name, kindNames[kind]);
  const room = Math.max(0, ...points.map((point) => point.name.length)) + 2;
  for (const point of points) page.item(point.name.padEnd(room), point.says);
  if (points.length === 0) page.say("Nothing is measured yet.");
  if (open.length > 0 && points.length > 0) page.say(`Not laid: ${open.join(", ")}.`, "quiet");
  if (cloth) page.say(`Cloth ${sayCloth(cloth.given)}.`);
  const needled = new Set(odd.map(({id}) => id));
  for (const {sentence, point} of tag) page.item(needled.has(`sizes.${point}`) ? "odd  " : "tag  ", `${sentence}.`, needled.has(`sizes.${point}`) ? "odd" : undefined);
  if (odd.length > 0) page.say("What is odd here does not move the date.", "quiet");
  for (const {problem} of doubts) page.item("look again  ", printProblem(problem), "odd");
}
