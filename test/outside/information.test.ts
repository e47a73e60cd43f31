// Information and its expectation against textbook cases: MacKay 2003, Information Theory, Inference, and Learning Algorithms;
// Lindley 1956, Annals of Mathematical Statistics 27:986; Cover & Thomas 2006. Printed roundings from memory, worked out again to 1e-9.
import {describe, expect, test} from "vitest";
import {outcome} from "../../engine/mark/ready-mark.ts";
import {expectedBits} from "../../engine/next/information.ts";
import {divergenceBits, entropyBits, normalized} from "../../engine/num/vector.ts";
import {close} from "../helper/close.ts";

/** Expected bits of a look: rows of `chances` are outcomes, columns are cells. */
const bitsOf = (prior: readonly number[], chances: readonly (readonly number[])[]): number => {
  const months = Float64Array.from(prior);
  return expectedBits([{joint: months, outcomes: chances.map((chance, i) => outcome(String(i), Float64Array.from(chance)))}], months);
};
const flat = (n: number) => new Float64Array(n).fill(1 / n);
const yesNo = (yes: readonly number[]) => [yes, yes.map((p) => 1 - p)];

describe("twelve balls, one odd, one weighing (MacKay 2003, exercise 4.1)", () => {
  /** Cell 2b: ball b is heavy; cell 2b + 1: it is light. */
  const weighing = (k: number) => {
    const tips = Array.from({length: 24}, (_, cell) => {
      const pan = cell >> 1 < k ? 1 : cell >> 1 < 2 * k ? -1 : 0;
      return cell % 2 === 0 ? pan : -pan;
    });
    return [1, 0, -1].map((side) => tips.map((tip) => (tip === side ? 1 : 0)));
  };
  test.each([
    [1, 0.8166890883150209], [2, 1.2516291673878228], [3, 1.5], [4, 1.584962500721156], [5, 1.4833557549816874], [6, 1],
  ])("%i against %i balls", (k, bits) => close(bitsOf([...flat(24)], weighing(k)), bits, {rel: 1e-12}));
  test("four against four says most, log2 3, of the log2 24 that are to be learnt", () => {
    const all = [1, 2, 3, 4, 5, 6].map((k) => bitsOf([...flat(24)], weighing(k)));
    expect(all.indexOf(Math.max(...all))).toBe(3);
    close(entropyBits(flat(24)), 4.584962500721156, {rel: 1e-14});
  });
});

describe("the hunt through 64 squares (MacKay 2003, section 4)", () => {
  const drop = (from: number, to: number) => entropyBits(flat(from)) - entropyBits(flat(to));
  test.each([
    [1, 0.02272007650008345], [2, 0.023083613113041242], [32, 0.044394119358453436], [33, 0.045803689613124754], [48, 0.0874628412503394],
  ])("miss number %i tells", (miss, bits) => {
    close(drop(65 - miss, 64 - miss), bits, {abs: 1e-14, because: "bits, of some six"});
    const left = normalized(Float64Array.from({length: 65 - miss}, (_, i) => (i === 0 ? 0 : 1)));
    close(divergenceBits(left, flat(65 - miss)), bits, {abs: 1e-14, because: "bits, of some six"});
  });
  test("32 misses tell one bit, a hit at the 49th shot four, all together six", () => {
    const misses = Array.from({length: 48}, (_, i) => drop(64 - i, 63 - i));
    close(misses.slice(0, 32).reduce((a, b) => a + b), 1, {rel: 1e-13});
    close(drop(16, 1), 4, {rel: 1e-14});
    close(misses.reduce((a, b) => a + b) + drop(16, 1), 6, {rel: 1e-13});
  });
  test("a shot is expected to tell the entropy of hit or miss", () => {
    const hit = Array.from({length: 64}, (_, square) => (square === 0 ? 1 : 0));
    close(bitsOf([...flat(64)], yesNo(hit)), entropyBits([1 / 64, 63 / 64]), {rel: 1e-12});
  });
});

describe("noisy looks (MacKay 2003, examples 9.5 to 9.9)", () => {
  const both = (p: number) => [1 - p, p];
  test("H2(0.15) is 0.6098403047164004", () => close(entropyBits(both(0.15)), 0.6098403047164004, {rel: 1e-12}));
  test("a symmetric look wrong in 15 %, prior 0.1: 0.150327198245565", () => close(bitsOf(both(0.1), yesNo([0.15, 0.85])), 0.150327198245565, {rel: 1e-9}));
  test("its output has the entropy 0.7601675029619656", () => close(entropyBits(both(0.9 * 0.15 + 0.1 * 0.85)), 0.7601675029619656, {rel: 1e-12}));
  test("at prior 1/2 it tells its capacity: 0.39015969528359956", () => close(bitsOf(both(0.5), yesNo([0.15, 0.85])), 0.39015969528359956, {rel: 1e-12}));
  test("wrong in 10 %, capacity: 0.5310044064107188", () => close(bitsOf(both(0.5), yesNo([0.1, 0.9])), 0.5310044064107188, {rel: 1e-12}));
  test("a one-sided look that misses 15 %, prior 0.1: 0.3585724657669068", () => close(bitsOf(both(0.1), yesNo([0, 0.85])), 0.3585724657669068, {rel: 1e-9}));
  test("its output has the entropy 0.41955649623854696", () => close(entropyBits(both(0.085)), 0.41955649623854696, {rel: 1e-12}));
  test("it tells most, 0.6854177516340363, at prior 0.4449108910482322", () => {
    const at = (p: number) => bitsOf(both(p), yesNo([0, 0.85]));
    close(at(0.4449108910482322), 0.6854177516340363, {rel: 1e-9});
    expect(at(0.4449108910482322)).toBeGreaterThan(at(0.4449));
    expect(at(0.4449108910482322)).toBeGreaterThan(at(0.445));
  });
  test("a rare thing, 1 %, with a clue seen on 95 % of it and 5 % of the rest: 0.03706547875622912 of 0.08079313589591118", () => {
    close(bitsOf(both(0.01), yesNo([0.05, 0.95])), 0.03706547875622912, {rel: 1e-9});
    close(entropyBits(both(0.01)), 0.08079313589591118, {rel: 1e-12});
  });
});

describe("six cells and one clue (Lindley 1956, by two routes)", () => {
  const prior = [0.1, 0.15, 0.25, 0.25, 0.15, 0.1];
  const clue = [0.9, 0.9, 0.6, 0.3, 0.1, 0.1];
  const after = (chance: readonly number[]) => normalized(Float64Array.from(prior, (p, i) => p * chance[i]!));
  test("the prior holds 2.485475297227334 bits", () => close(entropyBits(prior), 2.485475297227334, {rel: 1e-12}));
  test("seen, it leaves 2.1908495358159783; not seen, 2.179398207405553", () => {
    const [yes, no] = yesNo(clue);
    close(entropyBits(after(yes!)), 2.1908495358159783, {rel: 1e-12});
    close(entropyBits(after(no!)), 2.179398207405553, {rel: 1e-12});
    close(after(yes!)[2]!, 0.3157894736842105, {rel: 1e-12});
    close(after(no!)[3]!, 0.3333333333333333, {rel: 1e-12});
  });
  test("the look is worth 0.3006377088268291 bits", () => close(bitsOf(prior, yesNo(clue)), 0.3006377088268291, {rel: 1e-12}));
  test("split into two cases whose joints add up, it is worth the same", () => {
    const months = Float64Array.from(prior);
    const outcomes = yesNo(clue).map((chance, i) => outcome(String(i), Float64Array.from(chance)));
    const part = (share: number) => ({joint: months.map((p) => p * share), outcomes});
    close(expectedBits([part(0.3), part(0.7)], months), 0.3006377088268291, {rel: 1e-12});
  });
});

describe("entropy and divergence (Cover & Thomas 2006, example 1.1.2)", () => {
  const p = [0.5, 0.25, 0.125, 0.125];
  test("1/2, 1/4, 1/8, 1/8 has 1.75 bits", () => close(entropyBits(p), 1.75, {rel: 1e-15}));
  test("it is 1/4 bit from the flat one, both ways", () => {
    close(divergenceBits(p, flat(4)), 0.25, {rel: 1e-15});
    close(divergenceBits(flat(4), p), 0.25, {rel: 1e-15});
  });
  test("twelve alike have 3.584962500721156 bits", () => close(entropyBits(flat(12)), 3.584962500721156, {rel: 1e-15}));
  test("nothing is learnt from what is certain", () => {
    expect(entropyBits([1, 0, 0])).toBe(0);
    expect(bitsOf([1, 0], yesNo([0.9, 0.1]))).toBe(0);
    expect(divergenceBits(p, p)).toBe(0);
  });
});
