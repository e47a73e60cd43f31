// Grades everything on the rack by a rule: how many of each word, and what another rule would change.
import {z} from "zod";
import {gradeOf} from "../../state/grade.ts";
import {grades, type Grade} from "../../state/model.ts";
import {gradeRuleSchema} from "../../state/rule.ts";
import {allRecords} from "../rack/all-records.ts";
import {rackCommand} from "../rack/rack-command.ts";
import {readSetting} from "../rack/read-setting.ts";

const counts = z.record(z.enum(grades), z.number().int()).describe("garments of each grade");
/** So many moved garments are named; all are counted. */
const mostMoved = 200;

export const gradeRack = rackCommand({
  name: "rack.grades",
  summary: "grade everything on the rack whose state was noted, by the rule in use and by another one",
  route: {method: "post", path: "/api/state/grades"},
  input: z.strictObject({rule: gradeRuleSchema.nullable().default(null).describe("a rule to be tried; null: the one in use alone")}),
  output: z.strictObject({
    graded: z.number().int(),
    open: z.number().int().describe("garments whose state nobody noted"),
    now: counts,
    tried: counts,
    moved: z.array(z.strictObject({id: z.string(), number: z.string(), from: z.enum(grades), to: z.enum(grades), why: z.string()})).max(mostMoved).describe("by the tried rule"),
    movedCount: z.number().int(),
  }),
  mostBytes: 4_000_000,
  async run({rule}, {store}) {
    const inUse = (await readSetting(store, "grade-rule")).value;
    const none = () => Object.fromEntries(grades.map((grade) => [grade, 0])) as Record<Grade, number>;
    const answer = {graded: 0, open: 0, now: none(), tried: none(), moved: [] as {id: string; number: string; from: Grade; to: Grade; why: string}[], movedCount: 0};
    for await (const {id, removed, content: {garment, state}} of allRecords(store)) {
      if (removed) continue;
      if (!state) {
        answer.open++;
        continue;
      }
      const from = gradeOf(state, inUse);
      const to = rule ? gradeOf(state, rule) : from;
      answer.graded++;
      answer.now[from.grade]++;
      answer.tried[to.grade]++;
      if (from.grade === to.grade) continue;
      answer.movedCount++;
      if (answer.moved.length < mostMoved) answer.moved.push({id, number: garment.garment, from: from.grade, to: to.grade, why: to.sentence});
    }
    return {answer};
  },
});
