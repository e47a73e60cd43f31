// The rule that holds while the owner has none of their own. Kinds and words are the trade's; the points are common practice, no source.
import {gradeRuleSchema, type GradeRule} from "./rule.ts";

type FlawLine = readonly [kind: string, name: string, slight: number, plain: number, heavy: number, mended: number, large?: readonly [from: number, times: number], cap?: readonly [from: "slight" | "plain" | "heavy", grade: "good" | "fair" | "poor"]];

// Mended cloth keeps half of its points, a seam sewn again a fifth: the one shows, the other hardly does.
const flaws: readonly FlawLine[] = [
  ["hole", "hole", 3, 8, 18, 0.5, [25, 1.5], ["heavy", "fair"]],
  ["tear", "tear", 3, 8, 18, 0.5, [60, 1.5], ["heavy", "fair"]],
  ["thin-cloth", "thin cloth", 1, 4, 10, 0.7, [80, 1.5]],
  ["fraying", "fraying", 1, 3, 8, 0.5],
  ["moth-holes", "moth holes", 2, 6, 14, 0.5],
  ["burn", "burn", 3, 7, 14, 0.6],
  ["stain", "stain", 1, 4, 10, 1, [60, 1.5]],
  ["paint", "paint", 1, 3, 8, 1, [60, 1.5]],
  ["rust-mark", "rust mark", 1, 3, 8, 1],
  ["bleach-spot", "bleach spot", 2, 5, 10, 0.8],
  ["uneven-fade", "uneven fade", 1, 3, 8, 1],
  ["writing", "writing or name stamp", 1, 2, 4, 1],
  ["open-seam", "open seam", 1, 3, 8, 0.2, [100, 1.5]],
  ["broken-stitches", "broken stitches", 1, 2, 5, 0.2],
  ["pulled-thread", "pulled thread", 1, 2, 4, 0.5],
  ["pilling", "pilling", 1, 2, 4, 1],
  ["tired-rib", "tired rib or elastic", 1, 4, 8, 0.3],
  ["faulty-zip", "faulty zip", 2, 4, 8, 0.2],
  ["mould-spots", "mould spots", 5, 12, 25, 1, undefined, ["plain", "fair"]],
  ["dry-rot", "dry rot", 12, 30, 60, 1, undefined, ["slight", "poor"]],
];

type ThingLine = readonly [kind: string, name: string, points: number, cap?: "very good" | "good" | "fair"];
const thing = ([kind, name, points, cap = undefined]: ThingLine) => ({kind, name, points, cap: cap ?? null});

const alterations: readonly ThingLine[] = [
  ["shortened-hem", "shortened hem", 3], ["let-down-hem", "hem let down", 3], ["waist-taken-in", "waist taken in", 4], ["waist-let-out", "waist let out", 4], ["tapered-leg", "tapered leg", 6], ["shortened-sleeves", "shortened sleeves", 4],
  ["shortened-body", "shortened body", 6], ["cut-off", "legs or sleeves cut off", 20, "fair"], ["replaced-zip", "replaced zip", 3], ["replaced-buttons", "replaced buttons", 2], ["moved-button", "moved button", 1], ["patched", "patched on purpose", 2],
  ["dyed-over", "dyed over", 10, "good"], ["replaced-lining", "replaced lining", 4], ["sewn-in-label", "label sewn in later", 5],
];

const missing: readonly ThingLine[] = [
  ["button", "a button", 2], ["several-buttons", "several buttons", 5], ["zip-pull", "the zip pull", 1], ["belt-loop", "a belt loop", 2], ["patch", "the patch", 3], ["main-label", "the main label", 3], ["care-label", "the care label", 1], ["rivet", "a rivet", 2],
  ["cinch", "the cinch at the back", 3], ["pocket", "a pocket", 6, "good"], ["strap", "a strap", 5], ["lining", "the lining", 5], ["collar", "the collar", 6, "good"],
];

const fading: readonly (readonly [kind: string, name: string])[] = [
  ["whiskers", "whiskers at the lap"], ["honeycombs", "honeycombs behind the knees"], ["stacks", "stacks above the hem"], ["roping", "roping at the hem"], ["puckering", "puckered seams"], ["pocket-marks", "marks of what was carried"], ["even", "even all over"],
];

export const defaultRule: GradeRule = gradeRuleSchema.parse({
  title: "House rule",
  flaws: flaws.map(([kind, name, slight, plain, heavy, mended, large, cap]) => ({kind, name, slight, plain, heavy, mended, large: large ? {from: large[0], times: large[1]} : null, cap: cap ? {from: cap[0], grade: cap[1]} : null})),
  other: {slight: 2, plain: 5, heavy: 12},
  places: [{word: "crotch", times: 1.5}, {word: "chest", times: 1.2}, {word: "seat", times: 1.2}, {word: "inside", times: 0.5}, {word: "lining", times: 0.5}],
  alterations: alterations.map(thing),
  missing: missing.map(thing),
  fading: fading.map(([kind, name]) => ({kind, name})),
  wear: {none: 0, light: 2, even: 5, strong: 12, "worn out": 30},
  clean: {"unworn with tags": 0, washed: 0, clean: 0, dusty: 1, dirty: 3, smells: 5},
  unworn: true,
  upTo: {deadstock: 1, excellent: 4, "very good": 10, good: 20, fair: 40},
});
