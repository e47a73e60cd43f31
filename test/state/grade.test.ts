// The same flaws give the same grade in any order, one flaw more never betters it, and what is said to have decided did decide. The points of the rule are common practice, no source.
import fc from "fast-check";
import {expect, test} from "vitest";
import {defaultRule} from "../../state/default-rule.ts";
import {gradeOf} from "../../state/grade.ts";
import {grades, severities, type Flaw, type State} from "../../state/model.ts";
import {cleans, gradeIndex, gradeRuleSchema, wears, type GradeRule} from "../../state/rule.ts";
import {state} from "./sized.ts";

const flawArbitrary = fc.record<Flaw>({
  kind: fc.constantFrom(...defaultRule.flaws.map(({kind}) => kind), "a-kind-of-yesterday"),
  place: fc.constantFrom("", "left knee", "crotch", "seat", "lining"),
  side: fc.constantFrom("front" as const, "back" as const, "inside" as const),
  x: fc.constant(null),
  y: fc.constant(null),
  size: fc.option(fc.integer({min: 1, max: 300}), {nil: null}),
  severity: fc.constantFrom(...severities),
  mended: fc.boolean(),
  note: fc.constant(""),
});
const stateArbitrary = fc.record<State>({
  flaws: fc.array(flawArbitrary, {maxLength: 8}),
  wear: fc.constantFrom(null, ...wears),
  fading: fc.constant([]),
  clean: fc.constantFrom(null, ...cleans),
  alterations: fc.array(fc.constantFrom(...defaultRule.alterations.map(({kind}) => ({kind, place: "", note: ""}))), {maxLength: 3}),
  missing: fc.array(fc.constantFrom(...defaultRule.missing.map(({kind}) => kind)), {maxLength: 3}),
});
/** Rules that an owner could write: each flaw's points grow, the words go up to more and more points. */
const ruleArbitrary: fc.Arbitrary<GradeRule> = fc.record({
  points: fc.array(fc.integer({min: 0, max: 30}), {minLength: 3, maxLength: 3}),
  mended: fc.integer({min: 0, max: 10}),
  ends: fc.array(fc.integer({min: 0, max: 60}), {minLength: 5, maxLength: 5}),
  unworn: fc.boolean(),
}).map(({points, mended, ends, unworn}) => {
  const [slight, plain, heavy] = [...points].sort((a, b) => a - b) as [number, number, number];
  const [deadstock, excellent, veryGood, good, fair] = [...ends].sort((a, b) => a - b) as [number, number, number, number, number];
  return gradeRuleSchema.parse({...defaultRule, flaws: defaultRule.flaws.map((flaw) => ({...flaw, slight, plain, heavy, mended: mended / 10})), unworn, upTo: {deadstock, excellent, "very good": veryGood, good, fair}});
});

test("the same flaws in any order give the same grade, points and reasons", () => {
  fc.assert(
    fc.property(stateArbitrary, ruleArbitrary, fc.infiniteStream(fc.nat()), (seen, rule, turns) => {
      const shuffled = <T>(list: readonly T[]) => list.map((one) => ({one, at: turns.next().value as number})).sort((a, b) => a.at - b.at).map(({one}) => one);
      const other = {...seen, flaws: shuffled(seen.flaws), alterations: shuffled(seen.alterations), missing: shuffled(seen.missing)};
      const [a, b] = [gradeOf(seen, rule), gradeOf(other, rule)];
      expect([b.grade, b.points, b.sentence, b.mended]).toEqual([a.grade, a.points, a.sentence, a.mended]);
    }),
  );
});

test("one flaw, alteration or missing part more never betters the grade, nor does a worse or larger one", () => {
  fc.assert(
    fc.property(stateArbitrary, flawArbitrary, ruleArbitrary, (seen, flaw, rule) => {
      const before = gradeIndex(gradeOf(seen, rule).grade);
      const after = (more: Partial<State>) => gradeIndex(gradeOf({...seen, ...more}, rule).grade);
      expect(after({flaws: [...seen.flaws, flaw]})).toBeGreaterThanOrEqual(before);
      expect(after({alterations: [...seen.alterations, {kind: "dyed-over", place: "", note: ""}]})).toBeGreaterThanOrEqual(before);
      expect(after({missing: [...seen.missing, "collar"]})).toBeGreaterThanOrEqual(before);
      const mild: Flaw = {...flaw, severity: "slight", size: 1};
      expect(after({flaws: [...seen.flaws, {...flaw, severity: "heavy", size: 300}]})).toBeGreaterThanOrEqual(after({flaws: [...seen.flaws, mild]}));
    }),
  );
});

test("what decided did decide: without it the grade is better", () => {
  fc.assert(
    fc.property(stateArbitrary, ruleArbitrary, (seen, rule) => {
      const {grade, decided} = gradeOf(seen, rule);
      expect(decided.length === 0).toBe(grade === "deadstock");
      const flaws = seen.flaws.filter((flaw) => !decided.some((part) => part.flaw === flaw));
      if (decided.length > 0 && decided.every(({what}) => what === "flaw")) expect(gradeIndex(gradeOf({...seen, flaws}, rule).grade)).toBeLessThan(gradeIndex(grade));
    }),
  );
});

test("deadstock is unworn with its tags and nothing else", () => {
  expect(gradeOf(state({wear: "none", clean: "unworn with tags"})).grade).toBe("deadstock");
  expect(gradeOf(state({wear: "none", clean: "washed"})).grade).toBe("excellent");
  expect(gradeOf(state()).untold).toEqual(["wear", "cleanliness"]);
});

test("the sentence names the flaw, its points, and the grade without it", () => {
  const {sentence} = gradeOf(state({wear: "light", clean: "washed", flaws: [{kind: "hole", severity: "plain", place: "left knee"}]}));
  expect(sentence).toBe("Very good: hole at the left knee (8 points). Without it: excellent.");
});

test("dry rot makes it poor however little there is; a large hole at the crotch weighs more than one elsewhere", () => {
  expect(gradeOf(state({flaws: [{kind: "dry-rot", severity: "slight"}]})).grade).toBe("poor");
  const points = (flaw: object) => gradeOf(state({flaws: [{kind: "hole", severity: "plain", ...flaw}]})).points;
  expect(points({place: "crotch"})).toBe(12);
  expect(points({size: 40})).toBe(12);
  expect(points({mended: true})).toBe(4);
});

test("a rule whose words overlap, whose points fall, or that names a kind twice is refused", () => {
  const refused = (change: object) => gradeRuleSchema.safeParse({...defaultRule, ...change}).success;
  expect(refused({})).toBe(true);
  expect(refused({upTo: {...defaultRule.upTo, good: 5}})).toBe(false);
  expect(refused({flaws: [{...defaultRule.flaws[0], slight: 50}]})).toBe(false);
  expect(refused({missing: [defaultRule.missing[0], defaultRule.missing[0]]})).toBe(false);
});

test("every word of the trade can be reached by the rule that ships", () => {
  const seen = new Set(fc.sample(stateArbitrary, {numRuns: 600, seed: 7}).map((one) => gradeOf(one).grade));
  seen.add(gradeOf(state({wear: "none", clean: "unworn with tags"})).grade);
  expect([...seen].sort()).toEqual([...grades].sort());
});
