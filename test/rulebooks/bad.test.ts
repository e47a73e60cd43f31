// One file per mistake: test/bad/<name>.yaml, with the words that its message must contain and the line it must name.
import {readdirSync, readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {printProblem} from "../../engine/problem.ts";
import {validateBook, validateGarment} from "../../rulebooks/validate.ts";

const folder = new URL("../bad/", import.meta.url);
const read = (name: string) => readFileSync(new URL(`${name}.yaml`, folder));

// [file, code, line, words]
const books: [string, string, number, string[]][] = [
  ["duplicate-key", "yaml/duplicate-key", 4, ["\"edition\" is written twice", "line 3"]],
  ["unknown-key", "shape/unknown-name", 16, ["\"nmae\" is not known here", "write name"]],
  ["unknown-key-far", "shape/unknown-name", 4, ["\"colophon\" is not known here", "use one of book, title"]],
  ["missing-key", "shape/missing", 14, ["name is missing", "add name"]],
  ["missing-kind", "shape/missing", 31, ["kind is missing", "one of choice, presence, serial, coded or repeat"]],
  ["wrong-kind-of-mark", "shape/not-one-of", 32, ["\"seriel\" stands here", "write serial"]],
  ["text-wanted", "shape/wrong-kind", 2, ["1950 stands here", "in quotes: \"1950\""]],
  ["number-wanted", "shape/wrong-kind", 29, ["\"0,9\" stands here", "a number belongs here", "write a point in place of the comma: 0.9"]],
  ["list-wanted", "shape/wrong-kind", 55, ["\"zip\" stands here", "square brackets: [zip]"]],
  ["nothing-given", "shape/wrong-kind", 28, ["nothing stands here", "a group of named entries belongs here"]],
  ["share-too-big", "shape/out-of-range", 29, ["90 stands here", "at most 1"]],
  ["one-month-only", "shape/out-of-range", 28, ["1 entry stands here", "at least 2 entries"]],
  ["bad-month", "shape/badly-written", 5, ["\"1950-13\" stands here", "a month, written like 1968-03"]],
  ["bad-id", "shape/bad-name", 14, ["\"Zip\" cannot be a name here", "like green-satin"]],
  ["bad-part", "shape/unknown-name", 44, ["\"yaer\" is not known here", "write year"]],
  ["bad-part-value", "shape/not-one-of", 44, ["\"paded\" stands here", "plain or padded", "write padded"]],
  ["begins-reversed", "window/reversed", 28, ["begins runs from 1972-01 back to 1970-01", "begins: [1970-01, 1972-01]"]],
  ["ends-reversed", "window/reversed", 21, ["ends runs from 1982-01 back to 1980-01", "swap the two months"]],
  ["begins-after-ends", "window/ends-before-it-begins", 28, ["usual from 1982-01 but last usual in 1970-01", "swap begins and ends"]],
  ["covers-reversed", "book/covers-reversed", 5, ["covers 1999-12 to 1950-01", "swap the months"]],
  ["unlisted-source", "book/unlisted-source", 27, ["no source \"rak\"", "write rack"]],
  ["unknown-place", "book/unknown-place", 26, ["no place \"care-lable\"", "write care-label"]],
  ["unknown-piece", "book/unknown-piece", 18, ["no piece \"buttons\"", "use one of care-label"]],
  ["unknown-scheme", "book/unknown-scheme", 46, ["no scheme \"month-yaer\"", "write month-year"]],
  ["unknown-mark-in-group", "book/unknown-mark", 55, ["no mark \"symbols\"", "write symbol"]],
  ["mark-in-two-groups", "book/in-two-groups", 56, ["\"zip\" stands in group hardware already", "join the groups"]],
  ["unknown-market", "book/unknown-market", 30, ["no market \"eurpe\"", "write europe"]],
  ["unknown-plant", "book/unknown-plant", 30, ["no plant \"05\"", "write 04"]],
  ["unknown-label-kind", "book/unknown-label-kind", 30, ["no label kind \"satin\"", "add the label kind"]],
  ["mark-called-rows", "book/reserved-name", 23, ["a mark is called rows", "choose another name"]],
  ["value-called-other", "book/reserved-name", 22, ["a value is called other", "choose another name"]],
  ["memory-outside-zero", "memory/outside-zero", 22, ["outside is 0, and the source is memory", "a small share such as 0.01"]],
  ["memory-hard-end", "memory/hard-end", 28, ["only 6 months between", "at least 12 months apart"]],
  ["memory-hard-serial", "memory/hard-end", 39, ["fuzz with rise leaves only 5 months", "at least 12 months apart"]],
  ["knots-not-ascending", "serial/not-ascending", 38, ["number 90 follows 100", "a serial number only grows"]],
  ["knots-months-not-ascending", "serial/not-ascending", 38, ["month 1950-01 follows 1950-01", "order of time"]],
  ["use-reversed", "book/lag-reversed", 40, ["usual is 60 months, longest 24", "at least 60"]],
  ["use-half-given", "book/half-given", 40, ["usual is given, longest is not", "add longest"]],
  ["lag-reversed", "book/lag-reversed", 47, ["usual is 9 months, longest 3", "at least 9"]],
  ["widths-all-zero", "book/shares-all-zero", 51, ["all shares are 0", "above 0"]],
  ["figures-reversed", "book/range-reversed", 54, ["figures from 3 to 2", "swap them: [2, 3]"]],
  ["no-values", "book/nothing-listed", 20, ["values has no entry", "add an entry"]],
  ["scheme-without-date", "scheme/no-date", 44, ["no part of the scheme says anything of the date", "year: two figures"]],
  ["table-out-of-range", "scheme/table-out-of-range", 44, ["the sign \"N\" stands for 13", "from 1 to 12"]],
  ["specimen-span", "scheme/specimen-span", 47, ["\"68-03\" stands here", "write 1968-03"]],
  ["tab-at-line-start", "yaml/not-readable", 29, ["begins with a tab", "indent with blanks only"]],
  ["second-colon", "yaml/not-readable", 2, ["a second colon", "in quotes"]],
  ["open-bracket", "yaml/not-readable", 55, ["bracket"]],
  ["repeat-sign", "yaml/repeat-sign", 29, ["*w stands for something written elsewhere", "write the value out again"]],
  ["own-tag", "yaml/tag", 29, ["a word with !", "take the word with ! out"]],
  ["two-documents", "yaml/several-documents", 54, ["a second document", "take the line --- out"]],
  ["list-as-name", "yaml/key-not-text", 11, ["a name before the colon", "write the name as text"]],
  ["reserved-key", "yaml/key-reserved", 54, ["\"__proto__\" cannot be the name", "another name"]],
];

const garments: typeof books = [
  ["garment-without-name", "shape/missing", 1, ["garment is missing", "the owner's number or name for it", "add garment"]],
  ["garment-nothing-seen", "shape/wrong-kind", 3, ["nothing stands here", "or take the entry out"]],
  ["garment-unknown-key", "shape/unknown-name", 2, ['"makers" is not known here', "write maker"]],
  ["garment-bad-weights", "shape/wrong-kind", 3, ['"few" stands here', "a number belongs here"]],
];

test("the book that the mistakes were put into has none", () => {
  expect(validateBook(read("none"), "none.yaml").problems).toBeUndefined();
});

test.each(books)("the message about %s says what, where and how to mend it", (name, code, line, words) => {
  expectOnly(validateBook(read(name), `${name}.yaml`), name, code, line, words);
});

test.each(garments)("the message about a %s says what, where and how to mend it", (name, code, line, words) => {
  expectOnly(validateGarment(read(name), `${name}.yaml`), name, code, line, words);
});

test("every file of mistakes is in the tables", () => {
  const listed = [...books, ...garments].map(([name]) => `${name}.yaml`);
  expect([...listed, "none.yaml"].sort()).toEqual(readdirSync(folder).sort());
});

test("all mistakes of a file are told at once", () => {
  const text = read("none").toString().replace("edition: 1", "edition: none").replace("piece: care-label", "peice: care-label").replace("inside: 0.9", "inside: 2");
  const {problems} = validateBook(text, "book.yaml");
  expect(problems?.map(({at}) => at.split(" ")[0])).toEqual(["book.yaml:3:10", "book.yaml:18:5", "book.yaml:29:13"]);
});

test("contradictions are all told at once, and there is no book", () => {
  const text = read("none").toString().replace("piece: care-label", "piece: button").replace("[1980-01, 1982-01]", "[1982-01, 1980-01]").replace("number: 900", "number: 9");
  const checked = validateBook(text, "book.yaml");
  expect(checked.problems?.map(({code}) => code).sort()).toEqual(["book/unknown-piece", "serial/not-ascending", "window/reversed"]);
  expect(checked.book).toBeUndefined();
});

// A slip in the YAML itself may leave a second line that does not fit; everything else is told once.
function expectOnly(checked: ReturnType<typeof validateBook | typeof validateGarment>, name: string, code: string, line: number, words: string[]) {
  const problems = checked.problems ?? [];
  const [first] = problems;
  expect(first).toBeDefined();
  if (code !== "yaml/not-readable") expect(problems.map(printProblem)).toHaveLength(1);
  expect(first?.code).toBe(code);
  expect(first?.at).toMatch(new RegExp(`^${name}\\.yaml:${line}:\\d+`));
  for (const word of words) expect(printProblem(first!)).toContain(word);
}
