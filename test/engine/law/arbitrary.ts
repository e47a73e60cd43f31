// Made-up books and garments for the laws of the engine: any mix of marks, pieces, labels, makers, conditions and doubt.
import fc from "fast-check";
import {makeExaminer, type Examiner} from "../../../engine/index.ts";
import {month, printMonth} from "../../../engine/month/month.ts";
import {garmentSchema, type Garment} from "../../../engine/rule/garment.ts";
import type {Book} from "../../../engine/rule/schema.ts";
import {monthIndex} from "../../../engine/units.ts";
import {bookOf, cite, markOf, type Written} from "../../helper/small-book.ts";

/** Eight years: every law holds for any length, and a short axis tries more of them. */
export const axis = {since: month(1962, 1), today: month(1969, 12)};

const share = fc.oneof(fc.constantFrom(0, 0.02, 1), fc.double({min: 1e-6, max: 1, noNaN: true}));
const rate = fc.constantFrom(0, 0.01, 0.1, 0.3, 1);
const weight = fc.constantFrom(0.001, 0.5, 1, 3, 100);
const someMonth = fc.integer({min: month(1958, 1), max: month(1973, 12)});
const axisMonth = fc.integer({min: axis.since, max: axis.today});
const text = (m: number) => printMonth(monthIndex(m));

/** Four months in order, either end left open now and then. */
const windowsOf = (some: fc.Arbitrary<number>): fc.Arbitrary<Written> =>
  fc.tuple(fc.array(some, {minLength: 4, maxLength: 4}), fc.constantFrom("both", "begins", "ends", "open"))
  .map(([months, kind]) => {
    const [a, b, c, d] = months.sort((x, y) => x - y).map(text);
    return {...(kind === "both" || kind === "begins" ? {begins: [a, b]} : {}), ...(kind === "both" || kind === "ends" ? {ends: [c, d]} : {})};
  });

const windows = windowsOf(someMonth);
/** Windows that no axis has to be widened for. */
export const axisWindows = windowsOf(axisMonth);

const whens: fc.Arbitrary<Written | undefined> = fc.constantFrom(undefined, undefined, {market: "home"}, {market: ["abroad", "home"]}, {type: "trousers"});
const variantsWith = (window: fc.Arbitrary<Written>, when = whens) => fc.array(fc.record({when: when.filter((w): w is Written => w !== undefined), window, weight}), {maxLength: 1});
const commonWith = (stray: fc.Arbitrary<number>) =>
  fc.record({stray, lost: rate, piece: fc.constantFrom(undefined, undefined, "left", "right"), when: whens, "copied look": fc.boolean()});
/** Marks that are never stray among them: then evidence can contradict itself beyond repair. */
const anyRate = rate;
/** Every mark can be stray, as the schema has it by default. */
const someRate = fc.constantFrom(0.01, 0.1, 0.3, 1);
type Common = fc.Arbitrary<Written>;

const valuesWith = (window: fc.Arbitrary<Written>, when = whens) => fc
  .array(fc.record({window, weight, outside: fc.constantFrom(0, 0.01), variants: variantsWith(window, when)}), {minLength: 1, maxLength: 4})
  .map((list) => Object.fromEntries(list.map((value, i) => [["none", "red", "green", "blue"][(i + 1) % 4]!, {name: `value ${i}`, ...value}])));

const choicesWith = (common: Common, window = windows, others: readonly number[] = [0, 0.05, 2], when = whens) =>
  fc.tuple(common, valuesWith(window, when), fc.constantFrom(...others)).map(([rest, list, other]) => markOf({kind: "choice", ...rest, values: list, other}));
const presencesWith = (common: Common, window = windows) =>
  fc.record({rest: common, window, inside: share, outside: share, variants: fc.array(fc.record({when: fc.constant({market: "home"}), window}), {maxLength: 1})})
  .map(({rest, ...own}) => markOf({kind: "presence", ...rest, ...own}));
const serialsWith = (common: Common) =>
  fc.record({rest: common, months: fc.uniqueArray(someMonth, {minLength: 2, maxLength: 4}), numbers: fc.uniqueArray(fc.nat(9999), {minLength: 4, maxLength: 4}), fuzz: fc.nat(24), rise: fc.nat(24), usual: fc.option(fc.nat(200))})
  .map(({rest, months, numbers, fuzz, rise, usual}) => {
    const inOrder = (list: readonly number[]) => [...list].sort((a, b) => a - b);
    const knots = inOrder(months).map((m, i) => ({month: text(m), number: inOrder(numbers)[i]}));
    return markOf({kind: "serial", ...rest, knots, fuzz, use: {rise, ...(usual === null ? {} : {usual, longest: usual + 60})}});
  });
const codedsWith = (common: Common) => common.map((rest) => markOf({kind: "coded", ...rest, schemes: ["month-figure", "week-year"]}));
const plain = commonWith(someRate).map((rest) => ({...rest, when: undefined}));
/** Marks on any garment, that can be stray and always show something: every outcome has a chance in some month of the axis. */
export const plainChoices = choicesWith(plain, axisWindows, [0.05, 2], fc.constant({market: "home"}));
export const plainPresences = presencesWith(plain, axisWindows);
const marksWith = (common: Common) => fc.oneof(choicesWith(common), presencesWith(common), serialsWith(common), codedsWith(common));

const schemes = fc.record({one: windows, two: windows, lag: fc.option(fc.record({usual: fc.nat(6), longest: fc.nat(24)}))}).map(({one, two, lag}) => ({
  "month-figure": {name: "month and figure", parts: [{month: "plain"}, {text: " "}, {year: "last figure"}], window: one, source: cite},
  "week-year": {name: "week and year", parts: [{week: "padded"}, {year: "two figures"}], window: two, source: cite, ...(lag ? {lag} : {})},
}));
const pieces = fc.record({left: rate, right: rate}).map(({left, right}) => ({left: {name: "left piece", stray: left}, right: {name: "right piece", stray: right}}));
const named = (arbitrary: fc.Arbitrary<Written>, most: number, prefix: string) =>
  fc.array(arbitrary, {maxLength: most}).map((list) => Object.fromEntries(list.map((mark, i) => [`${prefix}-${i}`, mark])));

const publicBooksWith = (common: Common, tempers: readonly number[]) =>
  fc.record({marks: named(marksWith(common), 5, "mark"), schemes, pieces, temper: fc.constantFrom(...tempers)}).map(({marks: all, temper, ...rest}) => {
  const ids = Object.keys(all);
  return bookOf({...rest, marks: all, markets: {home: 5, abroad: 1}, groups: ids.length > 1 ? {some: {marks: ids.slice(0, 2), temper}} : {}});
});

const codeList = fc.record({unlisted: fc.constantFrom(0.3, 1), windows: fc.array(windows, {maxLength: 3}), early: windows}).map(({unlisted, windows: list, early}) => ({
  source: cite,
  unlisted,
  widths: [{window: early, shares: {"2": 0.9, "3": 0.1}}, {window: {}, shares: {"3": 1}}],
  codes: Object.fromEntries(list.map((window, i) => [["21", "38", "382"][i]!, {window}])),
}));
const labelsWith = (stray: fc.Arbitrary<number>) =>
  fc.record({stray, lost: rate, first: windows, second: windows, extra: fc.constantFrom(0.01, 0.3)}).map(({first, second, ...rest}) => ({
  name: "care label",
  place: "somewhere",
  source: cite,
  ...rest,
  kinds: {
    white: {name: "white", window: first, rows: [{share: 0.9, fields: ["date", " ", "plant"]}, {share: 0.5, fields: ["lot"]}]},
    blue: {name: "blue", window: second, rows: [], schemes: ["month-figure"]},
  },
}));
const makerBook = (id: string, stray: fc.Arbitrary<number>) =>
  fc
    .record({schemes, plants: codeList, lots: fc.option(codeList), labels: labelsWith(stray), stamp: windows, rates: commonWith(stray), covers: fc.constantFrom("1950-01", "1965-01")})
    .map(({stamp, rates, covers, lots, ...rest}) =>
      bookOf({
        ...rest,
        ...(lots ? {lots} : {}),
        book: id,
        kind: "maker",
        covers: {from: covers},
        marks: {"button-stamp": markOf({kind: "repeat", of: "plant", window: stamp, inside: 0.9, stray: rates.stray, lost: rates.lost, piece: rates.piece})},
        pieces: {left: {name: "left piece", stray: 0.02}, right: {name: "right piece", stray: 0.1}},
      }),
    );

const printed = fc.oneof(
  fc.constantFrom("3 8", "3 8 21", "38 21", "382 1", "3821", "12 7-38", "1765", "(3/8) 8", "? 1 21", "W 3", "", "13 9", "00", "31 (8:80/3:20) 382"),
  fc.stringMatching(/^[0-9 ]{0,7}$/),
  fc.stringMatching(/^[0-9A-Z?\-/. ]{0,6}$/),
);
const seen = fc.record({value: fc.constantFrom("none", "other", "red", "green", "blue"), present: fc.boolean(), number: fc.nat(12_000), code: printed, doubt: fc.boolean()});

type Looked = typeof seen extends fc.Arbitrary<infer T> ? T : never;

export interface Given {
  readonly books: readonly Book[];
  readonly garment: Garment;
}

function sawOf(books: readonly Book[], looks: readonly Looked[], rows: readonly string[]): Written {
  const saw: Record<string, unknown> = {};
  let i = 0;
  const next = () => looks[i++ % looks.length]!;
  for (const book of books) {
    for (const [id, mark] of Object.entries(book.marks)) {
      const look = next();
      if (look.number % 4 === 0) continue;
      if (mark.kind === "presence") saw[id] = look.present ? "present" : "absent";
      else if (mark.kind === "serial") saw[id] = look.doubt ? "none" : String(look.number);
      else if (mark.kind === "choice") {
        const value = look.value in mark.values || look.value === "other" || look.value === "none" ? look.value : Object.keys(mark.values)[0]!;
        saw[id] = look.doubt ? {either: {[value]: 3, other: 1}} : value;
      } else saw[id] = /[0-9A-Z?]/.test(look.code) ? look.code : "none";
    }
    if (book.labels && next().present) saw.label = next().present ? "white" : ["white", "blue"];
  }
  if (rows.length > 0) saw.rows = rows;
  return saw;
}

/** Books and a garment examined with them: one public book, up to two possible makers. */
const givensWith = (stray: fc.Arbitrary<number>, tempers: readonly number[]): fc.Arbitrary<Given> =>
  fc.record({
    open: publicBooksWith(commonWith(stray), tempers),
    first: makerBook("first", stray),
    second: makerBook("second", stray),
    makers: fc.constantFrom<readonly string[]>([], ["first"], ["first", "second"], ["first", "unlisted"]),
    looks: fc.array(seen, {minLength: 6, maxLength: 6}),
    rows: fc.array(printed, {maxLength: 3}),
    market: fc.constantFrom(undefined, undefined, "home", "abroad"),
    type: fc.constantFrom(undefined, "trousers", "jacket"),
  })
  .map(({open, first, second, makers, looks, rows, market, type}) => {
    const books = [open, ...[first, second].filter(({book}) => makers.includes(book))];
    return {books, garment: garmentSchema.parse({garment: "made up", maker: makers.length > 0 ? [...makers] : undefined, market, type, saw: sawOf(books, looks, makers.length > 0 ? rows : [])})};
  });

export const givens = givensWith(anyRate, [0.3, 1]);
/** Books whose every mark can be stray and whose marks are independent. */
export const plainGivens = givensWith(someRate, [1]);

export const examinerOf = (books: readonly Book[]): Examiner => makeExaminer(books, axis);
