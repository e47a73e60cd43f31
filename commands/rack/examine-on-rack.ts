// Examines a garment with the books in use, without keeping it.
import {findingShape, type FindingJson} from "../finding-shape.ts";
import {examineGarment, type ExamineAnswer} from "../examine.ts";
import {z} from "zod";
import {rackCommand, unfit} from "./rack-command.ts";

export const examineOnRack = rackCommand({
  name: "rack.examine",
  summary: examineGarment.summary,
  route: {method: "post", path: "/api/examine"},
  input: examineGarment.input,
  output: findingShape.extend({trace: z.array(z.string()).optional()}),
  async run(input, {world}) {
    const {answer, problems} = examineGarment.run(input, world);
    return problems ? unfit(problems) : {answer: examineGarment.json(answer as ExamineAnswer) as FindingJson & {trace?: string[]}};
  },
});
