// Code in README and guide runs, books and garments load, and what answers show is what is printed.
import {mkdirSync, writeFileSync} from "node:fs";
import {join} from "node:path/posix";
import {describe, expect, test} from "vitest";
import {makeExaminer, parseMonth, printProblem, type Problem} from "../../engine/index.ts";
import {shippedBooks, validateBook, validateGarment} from "../../rulebooks/index.ts";
import {valueOf} from "./expectations.ts";
import {blocksOf, filesBelow, root, type Block} from "./pages.ts";

const blocks = ["README.md", "CONTRIBUTING.md", ...filesBelow("docs", [".md"])].flatMap(blocksOf);
const ofKind = (kind: string) => blocks.filter((block) => block.kind === kind).map((block) => [block.at, block] as const);
const words = (problems: readonly Problem[] | undefined) => (problems ?? []).map(printProblem);

const entrances = {ticking: "engine/index.ts", "ticking/rulebooks": "rulebooks/index.ts"} as const;

/** A block as a module: entrances lead to the source, and every "// ->" becomes a pair of what was found and what was promised. */
function asModule({code}: Block): string {
  const imports = code.replace(/from "(ticking(?:\/rulebooks)?)"/g, (_, name: keyof typeof entrances) => `from ${JSON.stringify(join(root, entrances[name]))}`);
  const checked = imports.replace(/^(.*?);?\s*\/\/ -> (.+)$/gm, (_, expression: string, expected: string) => `found.push([${JSON.stringify(expression)}, ${expression}, ${JSON.stringify(expected)}]);`);
  return `export const found: [string, unknown, string][] = [];\n${checked}\n`;
}

describe("code", () => {
  test.each(ofKind("ts run"))("%s runs and gives what it says", async (at, block) => {
    const folder = join(root, ".cache/docs");
    mkdirSync(folder, {recursive: true});
    const file = join(folder, `${at.replace(/\W/g, "-")}.ts`);
    writeFileSync(file, asModule(block));
    const {found} = (await import(/* @vite-ignore */ file)) as {found: [string, unknown, string][]};
    expect(found.length).toBeGreaterThan(0);
    for (const [expression, value, expected] of found) expect(value, expression).toEqual(valueOf(expected));
  });

  test("no other TypeScript stands in the docs", () => expect(blocks.filter(({kind}) => kind === "ts")).toEqual([]));
});

/** What a piece of a book needs around it to be a whole one. */
function around(code: string): string {
  const has = (entry: string) => new RegExp(`^${entry}:`, "m").test(code);
  const frame: Record<string, string> = {
    book: "piece", title: "A piece of a book", edition: "1", kind: "maker", covers: "{from: 1940-01}",
    sources: "{rack: {kind: own rack, title: My own rack}}", places: "{somewhere: {name: somewhere, look: Look there., effort: 1}}",
  };
  return `${Object.entries(frame).filter(([entry]) => !has(entry)).map(([entry, value]) => `${entry}: ${value}`).join("\n")}\n${code}`;
}

describe("books and garments", () => {
  const examiner = makeExaminer(shippedBooks().books!, {today: parseMonth("2026-11")!});

  test.each(ofKind("yaml book"))("the book in %s loads", (at, {code}) => expect(words(validateBook(code, at).problems)).toEqual([]));

  test.each(ofKind("yaml in book"))("the piece of a book in %s loads", (at, {code}) => expect(words(validateBook(around(code), at).problems)).toEqual([]));

  test.each(ofKind("yaml garment"))("the garment in %s can be examined", (at, {code}) => {
    const {garment, problems} = validateGarment(code, at);
    expect(words(problems)).toEqual([]);
    expect(words(examiner.brief(garment!).problems)).toEqual([]);
  });

  test("no other YAML stands in the docs", () => expect(blocks.filter(({kind}) => kind === "yaml")).toEqual([]));
});
