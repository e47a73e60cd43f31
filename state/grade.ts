// The grade of a garment: what its state costs by the rule, the word that follows, and which flaws decided it.
import {defaultRule} from "./default-rule.ts";
import {grades, severities, type Flaw, type Grade, type State} from "./model.ts";
import {gradeIndex, type FlawRule, type GradeRule, type ThingRule} from "./rule.ts";

/** One thing that counts: a flaw, the wear, the dirt, an alteration, something missing, or that nobody said it is unworn. */
export interface GradePart {
  readonly what: "flaw" | "wear" | "clean" | "alteration" | "missing" | "unworn";
  /** "hole at the left knee" */
  readonly says: string;
  /** To the tenth. */
  readonly points: number;
  /** No better than this grade with it; null: it caps nothing. */
  readonly cap: Grade | null;
  readonly flaw: Flaw | null;
}

export interface Graded {
  readonly grade: Grade;
  readonly points: number;
  /** All that counts, the heaviest first. */
  readonly parts: readonly GradePart[];
  /** What decided: without it the grade would be better. */
  readonly decided: readonly GradePart[];
  /** "Good: hole at the left knee (8 points). Without it: excellent." */
  readonly sentence: string;
  /** The grade with every flaw mended, when that is a better one. */
  readonly mended: Grade | null;
  /** What nobody said yet, so that the grade stands on what is told. */
  readonly untold: readonly ("wear" | "cleanliness")[];
}

/**
 * Grades a state by a rule. The order of flaws never counts, and one flaw more never betters the grade: points are whole tenths and none is below 0.
 * @example
 * gradeOf({flaws: [], wear: "light", fading: [], clean: "washed", alterations: [], missing: []}).grade // -> "excellent"
 */
export function gradeOf(state: State, rule: GradeRule = defaultRule): Graded {
  const parts = partsOf(state, rule).sort((a, b) => b.points - a.points || (a.says < b.says ? -1 : a.says > b.says ? 1 : 0));
  const grade = wordFor(parts, rule);
  const decided = decidedBy(parts, grade, rule);
  const whole = wordFor(partsOf({...state, flaws: state.flaws.map((flaw) => ({...flaw, mended: true}))}, rule), rule);
  return {
    grade,
    points: sumOf(parts),
    parts,
    decided,
    sentence: sentenceOf(parts, grade, decided, rule),
    mended: gradeIndex(whole) < gradeIndex(grade) ? whole : null,
    untold: [...(state.wear === null ? ["wear" as const] : []), ...(state.clean === null ? ["cleanliness" as const] : [])],
  };
}

/** The rule's name of a flaw; the kind itself where the rule has none. */
export const flawName = (kind: string, rule: GradeRule = defaultRule) => rule.flaws.find((one) => one.kind === kind)?.name ?? kind.replaceAll("-", " ");

/** The rule's name of an alteration, something missing or a pattern of wear. */
export const thingName = (list: readonly {readonly kind: string; readonly name: string}[], kind: string) => list.find((one) => one.kind === kind)?.name ?? kind.replaceAll("-", " ");

function partsOf(state: State, rule: GradeRule): GradePart[] {
  const {flaws, wear, clean, alterations, missing} = state;
  const things = (what: "alteration" | "missing", kinds: readonly string[], list: readonly ThingRule[]) =>
    kinds.map((kind): GradePart => {
      const of = list.find((one) => one.kind === kind);
      return {what, says: what === "missing" ? `${thingName(list, kind)} missing` : thingName(list, kind), points: of?.points ?? rule.other.slight, cap: of?.cap ?? null, flaw: null};
    });
  const parts: GradePart[] = [
    ...flaws.map((flaw) => flawPart(flaw, rule)),
    ...things("alteration", alterations.map(({kind}) => kind), rule.alterations),
    ...things("missing", missing, rule.missing),
  ];
  if (wear !== null && rule.wear[wear] > 0) parts.push({what: "wear", says: wear === "worn out" ? "worn out" : `${wear} wear`, points: rule.wear[wear], cap: null, flaw: null});
  if (clean !== null && rule.clean[clean] > 0) parts.push({what: "clean", says: clean, points: rule.clean[clean], cap: null, flaw: null});
  if (rule.unworn && (wear !== "none" || clean !== "unworn with tags")) parts.push({what: "unworn", says: "worn, or not told to be unworn with its tags", points: 0, cap: "excellent", flaw: null});
  return parts;
}

function flawPart(flaw: Flaw, rule: GradeRule): GradePart {
  const of: Partial<FlawRule> & Pick<FlawRule, "slight" | "plain" | "heavy"> = rule.flaws.find(({kind}) => kind === flaw.kind) ?? rule.other;
  const where = `${flaw.side === "inside" ? "inside " : ""}${flaw.place}`.toLowerCase();
  const places = rule.places.filter(({word}) => where.includes(word.toLowerCase()));
  const times = places.reduce((all, one) => all * one.times, 1) * (of.large && flaw.size !== null && flaw.size >= of.large.from ? of.large.times : 1) * (flaw.mended ? (of.mended ?? 1) : 1);
  const capped = of.cap && severities.indexOf(flaw.severity) >= severities.indexOf(of.cap.from);
  return {what: "flaw", says: sayFlaw(flaw, rule), points: Math.round(10 * of[flaw.severity] * times) / 10, cap: capped ? of.cap!.grade : null, flaw};
}

/** "slight hole at the left knee, mended" */
export function sayFlaw({kind, severity, place, side, mended}: Flaw, rule: GradeRule = defaultRule): string {
  const at = place !== "" ? ` at the ${place}` : "";
  return `${severity === "plain" ? "" : `${severity} `}${flawName(kind, rule)}${at}${side === "inside" ? ", inside" : side === "back" && !at.includes("back") && at === "" ? ", at the back" : ""}${mended ? ", mended" : ""}`;
}

// Whole tenths, so that the order of adding cannot matter.
const sumOf = (parts: readonly GradePart[]) => parts.reduce((all, {points}) => all + Math.round(points * 10), 0) / 10;

function wordFor(parts: readonly GradePart[], {upTo}: GradeRule): Grade {
  const points = sumOf(parts);
  const byPoints = grades.findIndex((grade) => grade === "poor" || points <= upTo[grade]);
  return grades[Math.max(byPoints, ...parts.map(({cap}) => (cap ? gradeIndex(cap) : 0)))]!;
}

function decidedBy(parts: readonly GradePart[], grade: Grade, rule: GradeRule): GradePart[] {
  const better = (left: readonly GradePart[]) => gradeIndex(wordFor(left, rule)) < gradeIndex(grade);
  if (gradeIndex(grade) === 0) return [];
  const alone = parts.filter((part) => better(parts.filter((other) => other !== part)));
  if (alone.length > 0) return alone;
  // No single thing: the fewest of the heaviest that together do, those that cap the grade before all others.
  const heavy = [...parts].sort((a, b) => Number(b.cap === grade) - Number(a.cap === grade));
  for (let count = 2; count < heavy.length; count++) if (better(heavy.slice(count))) return heavy.slice(0, count);
  return heavy;
}

function sentenceOf(parts: readonly GradePart[], grade: Grade, decided: readonly GradePart[], rule: GradeRule): string {
  const word = grade.charAt(0).toUpperCase() + grade.slice(1);
  if (decided.length === 0) return `${word}: nothing speaks against it.`;
  const flaws = decided.filter(({what}) => what !== "unworn");
  const named = (flaws.length > 0 ? flaws : decided).map(({says, points, cap}) => `${says}${points > 0 ? ` (${sayPoints(points)}${cap === grade ? `, and no better than ${grade} with it` : ""})` : ""}`);
  const list = named.length > 1 ? `${named.slice(0, -1).join(", ")} and ${named.at(-1)!}` : named[0]!;
  if (flaws.length === 0) return `${word}: ${list}.`;
  if (flaws.length < decided.length) return `${word}: ${list}. Deadstock is only what is unworn, with its tags.`;
  const alone = new Set(decided.map((part) => wordFor(parts.filter((other) => other !== part), rule)));
  const [only] = alone;
  if (decided.length === 1) return `${word}: ${list}. Without it: ${only!}.`;
  if (alone.size === 1 && only !== grade) return `${word}: ${list}. Without any one of them: ${only!}.`;
  return `${word}: ${list}. Without them: ${wordFor(parts.filter((part) => !decided.includes(part)), rule)}.`;
}

export const sayPoints = (points: number) => `${points} ${points === 1 ? "point" : "points"}`;
