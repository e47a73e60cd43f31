// The rack graded over HTTP by the rule in use and by one that is tried.
import {expect, test} from "vitest";
import {defaultRule} from "../../state/default-rule.ts";
import {stateSchema} from "../../state/model.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {testApp} from "./test-app.ts";

interface Grades {
  readonly graded: number;
  readonly open: number;
  readonly now: Record<string, number>;
  readonly tried: Record<string, number>;
  readonly moved: readonly {readonly number: string; readonly from: string; readonly to: string}[];
}

test("a rule that is tried says which garments it would move; a saved one has moved them; one that cannot stand is refused", async () => {
  const t = testApp();
  const hung = (number: string, state: unknown) => t.expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: {garment: {garment: number, saw: {}}, state}});
  await hung("1", stateSchema.parse({wear: "light", clean: "washed", flaws: [{kind: "hole", severity: "plain", place: "left knee"}]}));
  await hung("2", stateSchema.parse({wear: "none", clean: "unworn with tags"}));
  await hung("3", null);
  const before = await t.expectJson<Grades>(200, "POST", "/api/state/grades", {});
  expect(before).toMatchObject({graded: 2, open: 1, now: {deadstock: 1, "very good": 1}, moved: []});

  const stern = {...defaultRule, flaws: defaultRule.flaws.map((flaw) => (flaw.kind === "hole" ? {...flaw, plain: 15} : flaw))};
  const tried = await t.expectJson<Grades>(200, "POST", "/api/state/grades", {rule: stern});
  expect(tried).toMatchObject({now: {"very good": 1}, tried: {good: 1}, moved: [{number: "1", from: "very good", to: "good"}]});

  await t.expectJson(200, "PUT", "/api/settings/grade-rule", {base: 0, value: stern});
  expect(await t.expectJson<Grades>(200, "POST", "/api/state/grades", {})).toMatchObject({now: {good: 1}, moved: []});
  await t.expectJson(422, "PUT", "/api/settings/grade-rule", {base: 1, value: {...stern, upTo: {...stern.upTo, good: 0}}});
});
