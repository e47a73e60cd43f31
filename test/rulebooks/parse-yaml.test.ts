// Reading YAML: values as the standard has them, names and codes as printed, and no harm from any bytes.
import {readFileSync} from "node:fs";
import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {parseYaml} from "../../rulebooks/parse-yaml.ts";
import {validateBook, validateGarment} from "../../rulebooks/validate.ts";

const codes = (input: string | Uint8Array) => parseYaml(input, "f").problems.map(({code}) => code);
const seeded = {seed: 19680301, numRuns: 300};

// YAML 1.2.2, section 10.3.2, example 10.9 "Core Tag Resolution".
test("values are those of the YAML 1.2 core schema, save that figures nobody writes on a garment stay text", () => {
  const example = [
    "A null: null", "Also a null: # Empty", 'Not a null: ""', "Booleans: [ true, True, false, FALSE ]", "Integers: [ 0, 0o7, 0x3A, -19 ]",
    "Floats: [ 0., -0.0, .5, +12e03, -2E+05 ]", "Also floats: [ .inf, -.Inf, +.INF, .NAN ]",
  ].join("\n");
  expect(parseYaml(example, "f").value).toEqual({
    "A null": null, "Also a null": null, "Not a null": "", Booleans: [true, true, false, false], Integers: [0, "0o7", "0x3A", -19],
    Floats: [0, -0, 0.5, 12_000, -200_000], "Also floats": [".inf", "-.Inf", "+.INF", ".NAN"],
  });
});

test("months and plain words are text, as the core schema has them", () => {
  expect(parseYaml("a: yes\nb: 1968-03\nc: 2002-04-28\nd: !!str 12\n", "f").value).toEqual({a: "yes", b: "1968-03", c: "2002-04-28", d: "12"});
});

// RFC 8259, section 13: the two examples of JSON texts, the first shortened.
test("JSON is read as well, tabs included", () => {
  expect(parseYaml('{\n\t"Image": {\n\t\t"Width": 800,\n\t\t"Animated": false,\n\t\t"IDs": [116, 943, 234, 38793]\n\t}\n}', "f").value).toEqual({Image: {Width: 800, Animated: false, IDs: [116, 943, 234, 38793]}});
});

test("names of entries stay as printed, however much they look like numbers", () => {
  expect(parseYaml("codes: { 021: a, 1e3: b, null: c, 0x1F: d }", "f").value).toEqual({codes: {"021": "a", "1e3": "b", null: "c", "0x1F": "d"}});
});

test("numbers keep their figures where codes are expected", () => {
  const {garment} = validateGarment("garment: 0042\nsaw:\n  rows: [0382, 12345678901234567890, 1e3]\n  stamp: 007\n  zip: { either: { brass: 0.80 } }\n", "g");
  expect(garment).toMatchObject({garment: "0042", saw: {rows: ["0382", "12345678901234567890", "1e3"], stamp: "007", zip: {either: {brass: 0.8}}}});
});

test("a path that is not there is told by the nearest entry above it", () => {
  const {where} = parseYaml("a:\n  b:\n    - 1\n    - c: 2\n", "f");
  expect(where?.(["a", "b", 1, "c"])).toBe("f:4:10 a.b #2.c");
  expect(where?.(["a", "b", 1, "c"], "key")).toBe("f:4:7 a.b #2.c");
  expect(where?.(["a", "x", "y"])).toBe("f:1:1 a.x.y");
});

// Each is refused or read within the time limit; on two busy cores the slowest takes about a second.
describe("hostile files end in a list of problems in bounded time", () => {
  const lines = (count: number, line: (i: number) => string) => Array.from({length: count}, (_, i) => line(i)).join("\n");
  const bomb = `${lines(9, (i) => `l${i}: &l${i} [${Array(9).fill(i === 0 ? "lol" : `*l${i - 1}`).join(", ")}]`)}\n`;
  test.each([
    ["an alias bomb", bomb, "yaml/repeat-sign"],
    ["an alias that holds itself", "a: &a [*a]\n", "yaml/repeat-sign"],
    ["nesting in brackets", "[".repeat(100_000), "file/too-deep"],
    ["nesting in braces", "{a: ".repeat(100_000), "file/too-deep"],
    ["nesting in dashes", "- ".repeat(100_000), "file/too-deep"],
    ["nesting by indentation", lines(1000, (i) => `${" ".repeat(i)}a:`), "file/too-deep"],
    ["nesting in question marks", "? ".repeat(100_000), "file/too-deep"],
    ["3 MB", "a".repeat(3_000_000), "file/too-large"],
    ["3 MB of letters of two bytes", "ä".repeat(1_500_000), "file/too-large"],
    ["a million entries", "- a\n".repeat(490_000), "file/too-many-entries"],
    ["many names", lines(150_000, (i) => `k${i}: 1`), "file/too-many-entries"],
    ["many closing brackets", "]".repeat(1_900_000), "yaml/not-readable"],
    ["many percent signs", "%a\n".repeat(600_000), "yaml/not-readable"],
    ["two names, written often", "a: 1\nb: 2\n".repeat(20_000), "yaml/duplicate-key"],
    ["nothing", "", "file/empty"],
    ["blanks and remarks", "\n  # nothing\n", "file/empty"],
    ["zeros", "\0".repeat(1000), "shape/wrong-kind"],
  ])("%s", (_, text, code) => {
    const start = performance.now();
    const {problems = []} = validateBook(text, "f");
    expect(problems[0]?.code).toBe(code);
    expect(problems.length).toBeLessThanOrEqual(201);
    expect(performance.now() - start).toBeLessThan(30_000);
  });

  test("many entries of the wrong shape", () => {
    const start = performance.now();
    const {problems = []} = validateBook(`groups: { a: { temper: 1, marks: [${"{mnth: 1},".repeat(20_000)}] } }`, "f");
    expect(problems.at(-1)?.code).toBe("file/more-problems");
    expect(performance.now() - start).toBeLessThan(30_000);
  });
});

test("bytes that are not UTF-8 are told as such", () => {
  expect(codes(new Uint8Array([0xff, 0xfe, 0x61, 0x00]))).toEqual(["file/not-utf-8"]);
  expect(codes(Buffer.from("title: caf\xe9", "latin1"))).toEqual(["file/not-utf-8"]);
  expect(parseYaml(Buffer.from("\ufefftitle: café"), "f").value).toEqual({title: "café"});
});

describe("whatever the input, there is a value or a problem and nothing is thrown", () => {
  test("random bytes", () => {
    fc.assert(fc.property(fc.uint8Array({maxLength: 400}), (bytes) => isAnswer(bytes)), seeded);
  });
  test("random texts of YAML's own signs", () => {
    const sign = fc.constantFrom(..."abc012 \n\t-:,[]{}#&*!|>'\"%@`?~.\\\r\u0085\u2028\ufeff<=_");
    fc.assert(fc.property(fc.array(sign, {maxLength: 120}), (signs) => isAnswer(signs.join(""))), seeded);
  });
  test("random texts, broken characters included", () => {
    fc.assert(fc.property(fc.string({unit: "binary", maxLength: 120}), (text) => isAnswer(text)), seeded);
  });
  test("random values written as JSON come back as they were", () => {
    const value = fc.jsonValue({maxDepth: 4}).filter((one) => !JSON.stringify(one).includes("__proto__"));
    fc.assert(
      fc.property(value, (one) => {
        const parsed = parseYaml(JSON.stringify(one), "f");
        if (parsed.problems.length === 0) expect(parsed.value).toEqual(JSON.parse(JSON.stringify(one)));
        else expect(parsed.problems.map(({code}) => code)).toContain("yaml/key-not-text");
      }),
      seeded,
    );
  });

  test("a good book with random pieces cut, doubled and moved", () => {
    const good = readFileSync(new URL("../bad/none.yaml", import.meta.url), "utf8");
    const spot = fc.nat(good.length - 1);
    fc.assert(
      fc.property(spot, fc.nat(40), spot, (from, length, to) => {
        const piece = good.slice(from, from + length);
        isAnswer(good.slice(0, from) + good.slice(from + length));
        isAnswer(good.slice(0, to) + piece + good.slice(to));
      }),
      {...seeded, numRuns: 150},
    );
  });

  function isAnswer(input: string | Uint8Array) {
    const problems = [validateBook(input, "f"), validateGarment(input, "f")].flatMap((checked) => checked.problems ?? []);
    const parts = problems.flatMap(({code, at, what, why, fix}) => [code, at, what, why, fix]);
    expect(parts.filter((part) => /undefined|NaN|\[object|^$/.test(part))).toEqual([]);
  }
});
