// Ties a code printed on the label to the same code seen elsewhere on the garment: the stamp on the back of a button repeats the plant.
import type {CellWeights} from "../cell/look-alike.ts";
import {addInto, times} from "../num/vector.ts";
import type {ReadyCodes} from "./code-list.ts";
import {sameUnlisted, seenAs, sumTerms, type CodeSight, type Term} from "./code-sight.ts";

/** A repeat as seen: its texts with weights, and how it behaves. */
export interface Repeat {
  readonly mark: string;
  readonly texts: readonly {readonly cells: readonly CellWeights[]; readonly weight: number; readonly shown: string}[];
  /** Chance that it shows the garment's own code, where it is carried at all. */
  readonly own: number;
  /** Chance of the texts as a stray: stray rate times the average over months. */
  readonly base: number;
  /** Share of garments that carry the repeat at all, by month. */
  readonly share: Float64Array;
}

/** Which of the garment's possible codes a case leaves: listed ones by index, and whether the unlisted ones. */
export interface CodeClass {
  readonly key: string;
  readonly has: (j: number) => boolean;
  readonly unlisted: boolean;
}

export const anyCode: CodeClass = {key: "", has: () => true, unlisted: true};

export interface Tie {
  /** Tells ties with different repeats or classes apart. */
  readonly key: string;
  readonly kept: CodeClass;
  /** Chance by month of the class and all repeats, no label telling the code. */
  readonly alone: Float64Array;
  /** Chance by month of the class, all repeats and the label's cells; null when no code of the class looks like them. */
  own(sight: CodeSight): Float64Array | null;
}

/**
 * The chance of everything seen of one hidden code: the label's cells and the repeats.
 * A stray repeat shows a code drawn like any other, averaged over the months. For every choice of which repeats belong, the
 * chance is a code's share by month times the shares of those repeats times a number: terms over a few vectors.
 */
export function tieOf(codes: ReadyCodes, repeats: readonly Repeat[], kept: CodeClass, n: number): Tie {
  const choices = belongings(repeats);

  const terms = (sight: CodeSight | null): Term[] => {
    const result: Term[] = [];
    for (const {belonging, factor, share} of choices) {
      const vector = (base: Float64Array) => (share ? known(base, share) : base);
      for (const [j, chance] of sight ? sight.listed : codes.all) {
        if (!kept.has(j)) continue;
        const looks = belonging.reduce((product, repeat) => product * looksLike(repeat, codes.codes[j]!), factor * chance);
        if (looks > 0) result.push({vector: vector(codes.listed[j]!), factor: looks});
      }
      if (kept.unlisted) addUnlisted(result, sight, belonging, factor, vector);
    }
    return result;
  };

  const addUnlisted = (into: Term[], sight: CodeSight | null, belonging: readonly Repeat[], factor: number, vector: (base: Float64Array) => Float64Array): void => {
    const walk = (r: number, agreeing: readonly (readonly CellWeights[])[], product: number): void => {
      const repeat = belonging[r];
      if (repeat) {
        for (const text of repeat.texts) walk(r + 1, [...agreeing, text.cells], product * text.weight);
        return;
      }
      const chance = agreeing.length > 0 ? product * sameUnlisted(agreeing) : product;
      if (chance === 0) return;
      for (const [w, width] of codes.widths.entries()) {
        if (agreeing.length === 0 || agreeing[0]!.length === w + 1) into.push({vector: vector(width), factor: chance});
      }
    };
    walk(0, sight ? [sight.cells] : [], factor);
  };

  const products = new Map<Float64Array, Map<Float64Array, Float64Array>>();
  const known = (base: Float64Array, share: Float64Array): Float64Array => {
    let byBase = products.get(share);
    if (!byBase) products.set(share, (byBase = new Map()));
    let found = byBase.get(base);
    if (!found) byBase.set(base, (found = times(base, share)));
    return found;
  };

  const owns = new WeakMap<CodeSight, Float64Array | null>();
  let alone: Float64Array | null = null;
  return {
    key: tieKey(repeats, kept),
    kept,
    get alone() {
      return (alone ??= sumTerms(terms(null)) ?? new Float64Array(n));
    },
    own(sight) {
      let found = owns.get(sight);
      if (found === undefined) owns.set(sight, (found = sumTerms(terms(sight))));
      return found;
    },
  };
}

/** Tells ties with different repeats or classes apart. */
export function tieKey(repeats: readonly Repeat[], kept: CodeClass): string {
  return `${kept.key}|${repeats.map(({mark, texts, own, base}) => `${mark}=${texts.map(({shown, weight}) => `${shown}*${weight}`).join(",")}@${own},${base}`).join("&")}`;
}

interface Belonging {
  /** Repeats that show the garment's own code. */
  readonly belonging: readonly Repeat[];
  /** Their chances of belonging and not being lost, times the chances of the others as strays. */
  readonly factor: number;
  /** Product of the shares by month of the repeats that belong; null when none does. */
  readonly share: Float64Array | null;
}

function belongings(repeats: readonly Repeat[]): Belonging[] {
  let result: Belonging[] = [{belonging: [], factor: 1, share: null}];
  for (const repeat of repeats) {
    result = result.flatMap(({belonging, factor, share}) => [
      {belonging, factor: factor * repeat.base, share},
      {belonging: [...belonging, repeat], factor: factor * repeat.own, share: share ? times(share, repeat.share) : repeat.share},
    ]);
  }
  return result.filter(({factor}) => factor > 0);
}

const looksLike = (repeat: Repeat, code: string) => repeat.texts.reduce((sum, text) => sum + text.weight * seenAs(text.cells, code), 0);

/** Chance by month of a repeat's texts when it belongs to the garment, is not lost, and the code is drawn like any other. */
export function trueChance(texts: Repeat["texts"], share: Float64Array, codes: ReadyCodes): Float64Array {
  const result = new Float64Array(share.length);
  for (const text of texts) {
    for (const [j, code] of codes.codes.entries()) {
      const chance = seenAs(text.cells, code);
      if (chance > 0) addInto(result, codes.listed[j]!, chance * text.weight);
    }
    const width = codes.widths[text.cells.length - 1];
    if (width) addInto(result, width, sameUnlisted([text.cells]) * text.weight);
  }
  for (let t = 0; t < result.length; t++) result[t]! *= share[t]!;
  return result;
}
