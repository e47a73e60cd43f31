// Where blanks stand between the characters of a reading: by what the recogniser says of them, and by how far apart the characters are.
import type {Alphabet, Table} from "./table.ts";

/** Narrow characters leave room beside them. */
const narrow = new Set("1I.-/J");
const isDigit = (character: string) => character >= "0" && character <= "9";

/** Weights of the signs of a blank, in log odds; fitted on made-up photos that nothing is reported of, docs/decisions/0019. */
const weights = {
  base: 0.62, said: 1.53, apart: 1.83, besideOthers: 3.43, alone: 1.71, apartAlone: 11.2, narrow: -0.89, digits: 3.16,
};
/** The same where it is not known how far a step goes. */
const plain = {base: 5.11, said: 1.2};

/** Two characters alone may be set wide: nothing beside them tells, so a blank is never surer than this. */
const mostAlone = 0.9;

/**
 * Chance of a blank after every character of a reading but the last.
 * @param reading  classes, none of them 0
 * @param peaks    the step at which each of them is said
 */
export function blanksAfter(table: Table, {characters}: Pick<Alphabet, "characters">, reading: readonly number[], peaks: readonly number[]): number[] {
  const at = peaks.map((peak, i) => middleOf(table, peak, reading[i]!));
  const steps = at.slice(1).map((here, i) => here - at[i]!);
  return steps.map((step, i) => {
    const said = Math.log(1e-7 + mostOf(table.blank, peaks[i]!, peaks[i + 1]!));
    if (table.stride === null) return chance(plain.base + plain.said * said);
    const [a, b] = [characters[reading[i]!]!, characters[reading[i + 1]!]!];
    const others = steps.filter((_, k) => k !== i).sort((x, y) => x - y);
    const apart = step * table.stride;
    const beside = others.length === 0 ? weights.alone + weights.apartAlone * apart : weights.apart * apart + weights.besideOthers * Math.min(3, step / Math.max(0.5, others[(others.length - 1) >> 1]!));
    const kinds = weights.narrow * (Number(narrow.has(a)) + Number(narrow.has(b))) + weights.digits * Number(isDigit(a) && isDigit(b));
    const blank = chance(weights.base + weights.said * said + beside + kinds);
    return others.length === 0 ? Math.min(mostAlone, blank) : blank;
  });
}

const chance = (odds: number) => Math.min(0.9995, Math.max(0.0005, 1 / (1 + Math.exp(-odds))));

/** The middle of a character between steps, by its own chance around its peak. */
function middleOf({steps, classes, p}: Table, peak: number, k: number): number {
  let [sum, weight] = [0, 0];
  for (let step = Math.max(0, peak - 1); step <= Math.min(steps - 1, peak + 1); step++) [sum, weight] = [sum + p[step * classes + k]! * step, weight + p[step * classes + k]!];
  return sum / weight;
}

function mostOf(values: Float64Array, from: number, to: number): number {
  let most = 0;
  for (let i = from; i <= to; i++) most = Math.max(most, values[i]!);
  return most;
}

/** The likeliest ways to set blanks in a text, with their chances. */
export function spacings(text: string, blanks: readonly number[], most: number): {text: string; p: number}[] {
  let found = [{text: text.slice(0, 1), p: 1}];
  for (let i = 1; i < text.length; i++) {
    const blank = blanks[i - 1]!;
    found = found.flatMap((one) => [{text: one.text + text[i]!, p: one.p * (1 - blank)}, {text: `${one.text} ${text[i]!}`, p: one.p * blank}]);
    if (found.length > most) found = found.sort((a, b) => b.p - a.p).slice(0, most);
  }
  return found;
}

/** Chance of exactly the blanks that a text has. */
export function spacingChance(text: string, blanks: readonly number[]): number {
  let [chanceOfAll, place] = [1, -1];
  for (let i = 0; i < text.length; i++) {
    if (text[i] === " ") continue;
    if (place >= 0) chanceOfAll *= text[i - 1] === " " ? blanks[place]! : 1 - blanks[place]!;
    place++;
  }
  return chanceOfAll;
}
