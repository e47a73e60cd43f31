// Examines a garment with the books in use, without keeping it.
import {z} from "zod";
import {examineGarment} from "../examine.ts";
import {findingShape} from "../finding-shape.ts";
import {rackCommand, unfit} from "./rack-command.ts";

export const examineOnRack = rackCommand({
  name: "rack.examine",
  summary: examineGarment.summary,
  route: {method: "post", path: "/api/examine"},
  input: examineGarment.input,
  output: findingShape.extend({trace: z.array(z.string()).optional()}),
  async run(input, {examine}) {
    const {answer, problems} = await examine(input);
    return problems ? unfit(problems) : {answer};
  },
});
