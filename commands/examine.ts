// Examines one garment: the whole finding, and every stage of it when asked.
import {z} from "zod";
import {trace as traceLines, type Finding} from "../engine/index.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import {command} from "./command.ts";
import {findingJson} from "./finding-json.ts";

export interface ExamineAnswer {
  readonly finding: Finding;
  /** Every stage in lines of text; null unless asked for. */
  readonly trace: readonly string[] | null;
}

export const examineGarment = command({
  name: "garment.examine",
  summary: "say when a garment was made, how sure that is, and why",
  input: z.strictObject({
    garment: garmentSchema,
    trace: z.boolean().default(false).describe("print every stage of the reasoning"),
  }),
  run({garment, trace}, world) {
    const {finding, problems} = world.examiner().examine(garment);
    if (problems) return {problems};
    const stages = trace ? world.examiner().stages(garment).finding : undefined;
    return {answer: {finding, trace: stages ? traceLines(stages, finding) : null}};
  },
  json: ({finding, trace}: ExamineAnswer) => ({...findingJson(finding), ...(trace ? {trace} : {})}),
});
