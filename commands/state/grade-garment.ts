// Grades a garment by a written rule, and says which flaws decided it.
import {z} from "zod";
import {defaultRule} from "../../state/default-rule.ts";
import {gradeOf, type Graded} from "../../state/grade.ts";
import {gradeRuleSchema} from "../../state/rule.ts";
import {command} from "../command.ts";
import {notLookedAt} from "./problems.ts";
import {measuredSubject} from "./subject.ts";

export const gradeGarment = command({
  name: "garment.grade",
  summary: "grade the state of a garment by the written rule, with the flaws that decided it",
  input: z.strictObject({of: measuredSubject, rule: gradeRuleSchema.default(defaultRule).describe("the rule to grade by; the house rule when left out")}),
  run: ({of: {name, state}, rule}) => (state ? {answer: gradeOf(state, rule)} : {problems: [notLookedAt(name)]}),
  json: (graded: Graded) => graded,
});
