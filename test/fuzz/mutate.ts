// Spoils inputs in the ways in which files get spoiled, and in the ways in which someone who means harm would.
import type {Random} from "../simulate/random.ts";

type Spoil = (text: string, random: Random) => string;

const oddSigns = ["\u0000", "\u0007", "\ufeff", "\u202e", "\u200b", "\u0301", "\ud800", "\uffff", "𝟛", "٣", "Ⅷ", "İ", "ß", "👖", "\u2028", "\u0085", "\r", "\t", "﹣", "８"];
const oddValues = ["null", "true", "[]", "{}", "~", "-1", "0", "-0", "1e308", "1e999", ".nan", ".inf", "NaN", "0x1F", "0o17", "1_000", "99999999999999999999", "5e-324", '""', "'", '"', "present", "none", "!!js 1", "&a *a", "<<", "2026-13", "0000-00", "9999-12"];
const oddKeys = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "valueOf", "rows", "label", "either", "garment", "length", "0", "", " "];

const placeIn = (text: string, random: Random) => random.whole(0, text.length);
const inserted = (text: string, at: number, what: string) => text.slice(0, at) + what + text.slice(at);

function swapped(text: string, pattern: RegExp, random: Random, by: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const match = random.pick(found);
  return text.slice(0, match.index) + by(match[0]) + text.slice(match.index + match[0].length);
}

function withLines(text: string, change: (lines: string[]) => void): string {
  const lines = text.split("\n");
  change(lines);
  return lines.join("\n");
}

const spoils: readonly Spoil[] = [
  // cut short, a part lost, a part twice
  (text, random) => text.slice(0, placeIn(text, random)),
  (text, random) => {
    const from = placeIn(text, random);
    return text.slice(0, from) + text.slice(from + random.whole(1, 40));
  },
  (text, random) => {
    const from = placeIn(text, random);
    return inserted(text, from, text.slice(from, from + random.whole(1, 200)));
  },
  // lines twice (and so keys), swapped, moved in
  (text, random) => withLines(text, (lines) => lines.splice(random.whole(0, lines.length), 0, random.pick(lines))),
  (text, random) => withLines(text, (lines) => lines.push(...lines.splice(random.whole(0, lines.length - 1), 1))),
  (text, random) => withLines(text, (lines) => {
    const at = random.whole(0, lines.length - 1);
    lines[at] = " ".repeat(random.whole(1, 5)) + lines[at];
  }),
  // other values, other kinds of value
  (text, random) => swapped(text, /[\w.-]+|"[^"\n]*"/g, random, () => random.pick(oddValues)),
  (text, random) => swapped(text, /"[^"\n]*"|[\w.-]+/g, random, (found) => random.pick([`[${found}]`, `{${found}: ${found}}`, `{"either": {${JSON.stringify(found)}: 1}}`, `[${found}, ${found}]`, JSON.stringify(found)])),
  (text, random) => swapped(text, /\d+/g, random, () => random.pick(["9".repeat(random.whole(1, 400)), "1e308", "-7", "0", "3.7", "1900", "2099", String(random.whole(0, 1e9))])),
  (text, random) => swapped(text, /[\w.-]+(?="?\s*:)/g, random, () => random.pick(oddKeys)),
  (text, random) => swapped(text, /[{[]/g, random, (found) => found + (found === "{" ? `"${random.pick(oddKeys)}": {"spoiled": 1}, ` : `${random.pick(oddValues)}, `)),
  // odd signs, brackets
  (text, random) => inserted(text, placeIn(text, random), random.pick(oddSigns).repeat(random.pick([1, 1, 1, 3, 80]))),
  (text, random) => inserted(text, placeIn(text, random), random.pick(["{", "}", "[", "]", '"', "'", ":", ",", "|", "(", ")", "/", "?", "#", "&", "*", "!", "%", "- ", "\n", "=1+1"])),
  (text, random) => inserted(text, placeIn(text, random), random.pick(["[", "{", "(", "- "]).repeat(random.pick([5, 60, 3000]))),
  // rows as long and as doubtful as can be
  (text, random) => swapped(text, /"(?:[\d?() /:.-]{3,})"/g, random, () => JSON.stringify(oddRow(random))),
];

/** A printed row that no label carries. */
export function oddRow(random: Random): string {
  const length = random.pick([1, 20, 60, 61, 200, 201]);
  const figure = () => String(random.whole(0, 9));
  const sign = random.pick<() => string>([figure, () => "?", () => `(${figure()}/${figure()})`, () => random.pick(["-", " ", ".", "/", "8"]), () => random.pick(["A", "Z", "7", " "]), () => random.pick(oddSigns)]);
  let row = "";
  while (row.length < length) row += sign();
  return row;
}

/** A garment that asks for as much work as the shape allows. */
export function heavyGarment(random: Random, marks: readonly string[], makers: readonly string[]): unknown {
  const cell = () => random.pick<unknown>([String(random.whole(0, 9)), "?", " ", {either: Object.fromEntries(Array.from({length: random.pick([2, 10, 40]) }, (_, i) => [String.fromCharCode(48 + i), random.next()]))}]);
  const row = () => random.pick<() => unknown>([() => oddRow(random), () => ({cells: Array.from({length: random.pick([1, 12, 60])}, cell)}), () => random.whole(0, Number.MAX_SAFE_INTEGER)])();
  const value = () => random.pick<() => unknown>([
    () => "none",
    () => oddRow(random).slice(0, random.pick([1, 8, 200])),
    () => Array.from({length: random.whole(1, 40)}, () => String(random.whole(0, 99))),
    () => ({either: Object.fromEntries(Array.from({length: 40}, (_, i) => [`value-${i}`, i]))}),
    () => random.whole(-1e6, 1e9),
    () => true,
  ])();
  const chosen = random.shuffled(marks).slice(0, random.pick([0, 1, 5, 60]));
  return {
    garment: "heavy",
    maker: random.pick<unknown>([undefined, makers, random.pick(makers)]),
    saw: {...Object.fromEntries(chosen.map((mark) => [mark, value()])), rows: Array.from({length: random.pick([1, 2, 12])}, row)},
  };
}

/** Spoils a text once or a few times; the result is bytes, no longer always text. */
export function spoiled(text: string, random: Random): Uint8Array {
  let result = text;
  for (let times = random.pick([1, 1, 1, 2, 2, 3, 6]); times > 0; times--) result = random.pick(spoils)(result, random).slice(0, 300_000);
  const bytes = Buffer.from(result, "utf8");
  if (random.happens(0.15)) for (let flips = random.whole(1, 8); flips > 0 && bytes.length > 0; flips--) bytes[random.whole(0, bytes.length - 1)] = random.whole(0, 255);
  return bytes;
}
