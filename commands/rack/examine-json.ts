// Examines a garment and gives the finding as plain JSON, so that it can be handed from a worker to the server.
import type {z} from "zod";
import type {Answer} from "../command.ts";
import {examineGarment, type ExamineAnswer} from "../examine.ts";
import type {FindingJson} from "../finding-shape.ts";
import type {World} from "../world.ts";

export type ExamineInput = z.output<typeof examineGarment.input>;
export type ExaminedJson = FindingJson & {readonly trace?: readonly string[]};

export function examineJson(input: ExamineInput, world: World): Answer<ExaminedJson> {
  const {answer, problems} = examineGarment.run(input, world);
  return problems ? {problems} : {answer: examineGarment.json(answer as ExamineAnswer) as ExaminedJson};
}
