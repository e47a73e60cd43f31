// Laws of single marks: order does not matter, what says nothing changes nothing, one mark alone gives prior times share.
import fc from "fast-check";
import {describe, test} from "vitest";
import {makeExaminer} from "../../../engine/index.ts";
import {entropyBits, sum} from "../../../engine/num/vector.ts";
import {parseMonth} from "../../../engine/month/month.ts";
import {garmentSchema} from "../../../engine/rule/garment.ts";
import type {Book} from "../../../engine/rule/schema.ts";
import {allClose, close} from "../../helper/close.ts";
import {bookOf, markOf, type Written} from "../../helper/small-book.ts";
import {axis, axisWindows, examinerOf, givens, plainChoices, plainPresences} from "./arbitrary.ts";

const settings = {seed: 11, numRuns: 1000};
const because = "probabilities, which sum to 1";
const valueIds = (mark: Written) => Object.keys(mark.values as object);
const posteriorOf = (books: readonly Book[], garment: Written) => examinerOf(books).brief(garmentSchema.parse({garment: "made up", ...garment})).finding!.posterior;

describe("order", () => {
  test("of what was seen, of the books' marks and of the books never matters", () => {
    fc.assert(
      fc.property(givens, ({books, garment}) => {
        const backwards = <T>(record: Readonly<Record<string, T>>) => Object.fromEntries(Object.entries(record).reverse());
        const turned = [...books].reverse().map((book) => ({...book, marks: backwards(book.marks), schemes: backwards(book.schemes)}));
        const one = examinerOf(books).brief(garment).finding!;
        const other = examinerOf(turned).brief({...garment, saw: backwards(garment.saw) as typeof garment.saw}).finding!;
        allClose(other.posterior, one.posterior, {abs: 1e-9, because});
      }),
      {...settings, numRuns: 300},
    );
  });

  // Rows without a layout; where a layout is known its order counts, and where a stamp repeats the plant the first plant row is tied to it.
  test("of rows of unknown layout never matters", () => {
    const book = bookOf({
      book: "maker",
      kind: "maker",
      labels: {name: "label", place: "somewhere", source: {ref: "test", how: "inferred"}, kinds: {white: {name: "white", window: {}}}},
      plants: {source: {ref: "test", how: "inferred"}, widths: [{window: {}, shares: {"2": 0.5, "3": 0.5}}], codes: {"21": {window: {ends: ["1965-01", "1966-01"]}}}},
      schemes: {figure: {name: "month and figure", parts: [{month: "plain"}, {year: "last figure"}], window: {}, source: {ref: "test", how: "inferred"}}},
    });
    const row = fc.stringMatching(/^[0-9 ]{1,6}$/).filter((text) => /\d/.test(text));
    fc.assert(
      fc.property(row, row, row, (a, b, c) => {
        allClose(posteriorOf([book], {maker: "maker", saw: {rows: [c, a, b]}}), posteriorOf([book], {maker: "maker", saw: {rows: [a, b, c]}}), {abs: 1e-12, because});
      }),
      {...settings, numRuns: 200},
    );
  });
});

describe("what says nothing", () => {
  test("a mark with one value that is always in use and nothing beside it changes nothing", () => {
    fc.assert(
      fc.property(givens, fc.constantFrom(0, 0.02, 0.5), fc.constantFrom(0, 0.4), ({books, garment}, stray, lost) => {
        const idle = bookOf({book: "idle", marks: {idle: markOf({kind: "choice", stray, lost, other: 0, values: {only: {name: "only", window: {}}}})}});
        const without = examinerOf(books).brief(garment).finding!.posterior;
        const withIt = examinerOf([...books, idle]).brief({...garment, saw: {...garment.saw, idle: "only"} as typeof garment.saw}).finding!.posterior;
        allClose(withIt, without, {abs: 1e-9, because});
      }),
      {...settings, numRuns: 300},
    );
  });

  test("having seen any of all values there can be changes nothing", () => {
    fc.assert(
      fc.property(plainChoices, (mark) => {
        const all = [...valueIds(mark), "other"];
        allClose(posteriorOf([bookOf({marks: {mark: {...mark, lost: 0}}})], {saw: {mark: all}}), new Float64Array(96).fill(1 / 96), {abs: 1e-12, because});
      }),
      settings,
    );
  });
});

/** The window of the model by its formula: docs/model.md, section 1. */
function heightOf({begins, ends}: {begins?: readonly string[]; ends?: readonly string[]}, t: number): number {
  const months = (pair: readonly string[]) => pair.map((text) => parseMonth(text)! as number) as [number, number];
  const clamp = (x: number) => Math.min(1, Math.max(0, x));
  let height = 1;
  if (begins) {
    const [b0, b1] = months(begins);
    height *= b0 === b1 ? Number(t >= b0) : clamp((t + 0.5 - b0) / (b1 - b0));
  }
  if (ends) {
    const [e0, e1] = months(ends);
    height *= e0 === e1 ? Number(t <= e1) : clamp((e1 + 1 - t - 0.5) / (e1 - e0));
  }
  return height;
}

describe("one mark alone", () => {
  const priors = fc.array(fc.integer({min: 0, max: 9}), {minLength: 96, maxLength: 96}).filter((list) => list.some((w) => w > 0));
  test("that is never stray or lost gives prior times share, by the formula of the model", () => {
    fc.assert(
      fc.property(fc.array(axisWindows, {minLength: 1, maxLength: 4}), fc.array(fc.double({min: 0.01, max: 50, noNaN: true}), {minLength: 4, maxLength: 4}), priors, (list, weights, prior) => {
        const values = Object.fromEntries(list.map((window, i) => [`value-${i}`, {name: `value ${i}`, window, weight: weights[i]}]));
        const book = bookOf({marks: {mark: markOf({kind: "choice", other: 0.05, values})}});
        const heights = list.map((window, i) => Array.from({length: 96}, (_, t) => weights[i]! * heightOf(window, axis.since + t)));
        const expected = prior.map((p, t) => (p * heights[0]![t]!) / (heights.reduce((total, vector) => total + vector[t]!, 0) + 0.05));
        const total = expected.reduce((a, b) => a + b);
        fc.pre(total > 0);
        const {posterior} = makeExaminer([book], {...axis, prior: Float64Array.from(prior)}).brief({garment: "made up", saw: {mark: "value-0"}}).finding!;
        allClose(posterior, expected.map((p) => p / total), {abs: 1e-12, because});
      }),
      settings,
    );
  });

  /** What a look at `asked` is expected to settle by the engine, and by examining every outcome in turn. */
  const settled = (book: Book, saw: Record<string, string>, outcomes: readonly string[]) => {
    const examiner = examinerOf([book]);
    const stages = (more: Record<string, string>) => examiner.stages({garment: "made up", saw: {...saw, ...more}}).finding!;
    const mass = (more: Record<string, string>) => sum(stages(more).evaluations.map(({joint}) => sum(joint)));
    const before = mass({});
    fc.pre(before > 0);
    const each = outcomes.map((value) => ({weight: mass({asked: value}) / before, entropy: Number(entropyBits(stages({asked: value}).posterior))}));
    close(each.reduce((total, {weight}) => total + weight, 0), 1, {abs: 1e-9, because});
    const exact = each.reduce((drop, {weight, entropy}) => drop - weight * entropy, Number(entropyBits(stages({}).posterior)));
    const named = examiner.examine({garment: "made up", saw}).finding!.next.find(({id}) => id === "asked");
    return {exact, named: named?.bits ?? 0};
  };
  const outcomesOf = (mark: Written) => (mark.kind === "presence" ? ["present", "absent"] : [...valueIds(mark).filter((id) => id !== "none"), "other", "none"]);
  const small = {abs: 1.01e-3, because: "looks of less than 1e-3 bits are not named"} as const;
  const alone = (mark: Written) => ({...mark, piece: undefined});

  test("is expected to settle what its outcomes settle on average, each examined in turn (Lindley 1956)", () => {
    fc.assert(
      fc.property(fc.tuple(plainChoices, plainPresences, fc.oneof(plainChoices, plainPresences)), ([first, second, asked]) => {
        const book = bookOf({marks: {first: alone(first), second: alone(second), asked: alone(asked)}, markets: {home: 5, abroad: 1, elsewhere: 2}});
        const {exact, named} = settled(book, {first: outcomesOf(first)[0]!, second: "present"}, outcomesOf(asked));
        close(named, exact, small);
      }),
      settings,
    );
  });

  // Where the book's markets are all told apart, an examination still leaves room for one more of the least weight, a look does not.
  test("is expected to settle as much with every market of the book told apart", () => {
    const step = (begins: string) => ({begins: [begins, begins]});
    const variants = ["home", "abroad"].map((market) => ({when: {market}, window: step("1966-01"), weight: 0.001}));
    const asked = markOf({kind: "choice", other: 0.05, values: {red: {name: "red", window: step("1966-01"), variants}}});
    const {exact, named} = settled(bookOf({marks: {asked}, markets: {home: 5, abroad: 1}}), {}, outcomesOf(asked));
    close(named, exact, small);
  });

  // Once a seen mark has told one market from all others, a look that tells two of the others apart takes them for one.
  test("is expected to settle as much when it tells apart what a seen mark left together", () => {
    const step = (begins: string) => ({begins: [begins, begins]});
    const first = markOf({kind: "presence", window: step("1962-01"), inside: 0.5, outside: 0, variants: [{when: {market: "home"}, window: step("1969-12")}]});
    const variants = [{when: {market: "abroad"}, window: step("1966-01"), weight: 100}];
    const asked = markOf({kind: "choice", other: 0.05, values: {red: {name: "red", window: step("1966-01"), weight: 0.001, variants}}});
    const {exact, named} = settled(bookOf({marks: {first, asked}, markets: {home: 5, abroad: 1, elsewhere: 2}}), {first: "present"}, outcomesOf(asked));
    close(named, exact, small);
  });

  // The stray rate of a piece of which nothing was seen yet is left out: 0.83 bits are promised where 0.17 are to be had.
  test("on a piece that may come from elsewhere is expected to settle less", () => {
    const asked = markOf({kind: "presence", piece: "left", window: {begins: ["1966-01", "1966-01"]}, inside: 0.97, outside: 0.02});
    const {exact, named} = settled(bookOf({marks: {asked}, pieces: {left: {name: "left piece", stray: 0.5}}}), {}, outcomesOf(asked));
    close(named, exact, small);
  });
});
