// Ties a code printed on the label to the same code seen elsewhere on the garment: the stamp on the back of a button repeats the plant.
import type {CellWeights} from "../cell/look-alike.ts";
import {mean} from "../num/vector.ts";
import type {ReadyCodes} from "./code-list.ts";
import {add, sameUnlisted, seenAs, type CodeSight} from "./code-sight.ts";

/** A repeat as seen: its texts with weights, and how it behaves. */
export interface Repeat {
  readonly mark: string;
  readonly texts: readonly {readonly cells: readonly CellWeights[]; readonly weight: number; readonly shown: string}[];
  readonly stray: number;
  readonly lost: number;
  /** Share of garments that carry the repeat at all, by month. */
  readonly share: Float64Array;
}

/** Which of the garment's possible codes a case leaves: listed ones by index, and whether the unlisted ones. */
export interface CodeClass {
  readonly has: (j: number) => boolean;
  readonly unlisted: boolean;
}

export const anyCode: CodeClass = {has: () => true, unlisted: true};

export interface Tie {
  /** Chance by month of the class and all repeats, no label telling the code. */
  readonly alone: Float64Array;
  /** Chance by month of the class, all repeats and the label's cells. */
  with(sight: CodeSight): Float64Array;
}

/**
 * The chance of everything seen of one hidden code: the label's cells and the repeats.
 * A stray repeat shows a code drawn like any other, averaged over the months.
 */
export function tieOf(codes: ReadyCodes, repeats: readonly Repeat[], kept: CodeClass, n: number): Tie {
  const bases = repeats.map((repeat) => repeat.stray * mean(trueChance(repeat, codes, n)));
  const known = new Map<string, Float64Array>();

  /** Chance by month of the repeats given listed code j. */
  const given = (code: string): Float64Array => {
    const result = new Float64Array(n).fill(1);
    repeats.forEach((repeat, r) => {
      const looks = repeat.texts.reduce((sum, text) => sum + text.weight * seenAs(text.cells, code), 0);
      const scale = (1 - repeat.stray) * (1 - repeat.lost) * looks;
      for (let t = 0; t < n; t++) result[t]! *= scale * repeat.share[t]! + bases[r]!;
    });
    return result;
  };

  /** Adds the unlisted codes: every choice of which repeats belong and which are stray, and of their texts. */
  const addUnlisted = (into: Float64Array, sight: CodeSight | null): void => {
    const walk = (r: number, agreeing: readonly (readonly CellWeights[])[], factor: number, shares: Float64Array | null): void => {
      if (r === repeats.length) {
        for (const [w, width] of codes.widths.entries()) {
          if (agreeing.length > 0 && agreeing[0]!.length !== w + 1) continue;
          const chance = agreeing.length > 0 ? sameUnlisted(agreeing) : 1;
          if (chance === 0) continue;
          for (let t = 0; t < n; t++) into[t]! += width[t]! * factor * chance * (shares ? shares[t]! : 1);
        }
        return;
      }
      const repeat = repeats[r]!;
      walk(r + 1, agreeing, factor * bases[r]!, shares);
      for (const text of repeat.texts) {
        const scale = factor * (1 - repeat.stray) * (1 - repeat.lost) * text.weight;
        walk(r + 1, [...agreeing, text.cells], scale, shares ? shares.map((s, t) => s * repeat.share[t]!) : repeat.share);
      }
    };
    walk(0, sight ? [sight.cells] : [], 1, null);
  };

  const build = (sight: CodeSight | null): Float64Array => {
    const result = new Float64Array(n);
    const looks = sight ? sight.listed : codes.codes.map((_, j) => [j, 1] as const);
    for (const [j, chance] of looks) {
      if (!kept.has(j)) continue;
      const repeated = given(codes.codes[j]!);
      for (let t = 0; t < n; t++) repeated[t]! *= codes.listed[j]![t]!;
      add(result, repeated, chance);
    }
    if (kept.unlisted) addUnlisted(result, sight);
    return result;
  };

  return {
    alone: build(null),
    with(sight) {
      const key = sight.cells.map((cell) => [...cell].join()).join(";");
      let found = known.get(key);
      if (!found) known.set(key, (found = build(sight)));
      return found;
    },
  };
}

/** Chance by month of a repeat that belongs to the garment, its code unknown. */
export function trueChance(repeat: Repeat, codes: ReadyCodes, n: number): Float64Array {
  const result = new Float64Array(n);
  for (const text of repeat.texts) {
    for (const [j, code] of codes.codes.entries()) {
      const chance = seenAs(text.cells, code);
      if (chance > 0) add(result, codes.listed[j]!, chance * text.weight);
    }
    const width = codes.widths[text.cells.length - 1];
    if (width) add(result, width, sameUnlisted([text.cells]) * text.weight);
  }
  for (let t = 0; t < n; t++) result[t]! *= (1 - repeat.lost) * repeat.share[t]!;
  return result;
}
