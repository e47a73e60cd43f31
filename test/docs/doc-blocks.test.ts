// The @example lines of doc blocks run and give what they say.
import {join} from "node:path/posix";
import {describe, expect, test} from "vitest";
import {loadBook, loadGarment, shippedBooks} from "../../rulebooks/load.ts";
import {makeWorld} from "../../commands/world.ts";
import * as engine from "../../engine/index.ts";
import {schemeOf} from "../helper/small-book.ts";
import {expectationsOf, valueOf} from "./expectations.ts";
import {filesBelow, readPage, root} from "./pages.ts";

const monthAndYearFigure = engine.loneScheme(schemeOf([{month: "plain"}, {year: "last figure"}]));

const shippedWorld = () => makeWorld(shippedBooks().books!, engine.month(2026, 6));

/** Names that an example takes for granted beside those of its own file. */
const context: Readonly<Record<string, () => Record<string, unknown>>> = {
  "engine/month/fiscal-year.ts": () => ({month: engine.month}),
  "engine/scheme/code.ts": () => ({monthAndYearFigure, dayNumber: engine.dayNumber}),
  "engine/infer/examine.ts": () => ({books: shippedBooks().books, garment: loadGarment("rulebooks/demo/garments/0147.yaml").garment, parseMonth: engine.parseMonth}),
  "commands/reading/suggest-kinds.ts": () => ({world: shippedWorld()}),
  "commands/reading/suggest-marks.ts": () => ({world: shippedWorld()}),
  "commands/reading/widen.ts": () => ({row: {best: "3 8 21", places: [..."3 8 21"].map((character) => [{character, p: 0.9}])}, marrowfield: loadBook("rulebooks/makers/marrowfield.yaml").book}),
  "rulebooks/compare.ts": () => {
    const third = loadBook("rulebooks/makers/marrowfield.yaml").book!;
    const green = third.labels!.kinds["green-satin"]!;
    const earlier = {...green, window: {...green.window, ends: ["1977-01", "1978-06"] as [string, string]}};
    const later = {...green, window: {...green.window, ends: ["1978-01", "1979-06"] as [string, string]}};
    const withGreen = (edition: number, kind: typeof green) => ({...third, edition, labels: {...third.labels!, kinds: {...third.labels!.kinds, "green-satin": kind}}});
    return {second: withGreen(2, earlier), third: withGreen(3, later)};
  },
};

/** The lines below each @example, up to the next tag or the end of the block. */
function examplesOf(text: string): string[][] {
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap(([block]) =>
    block.split("@example").slice(1).map((rest) => rest.split(/\n\s*\*\s*@|\*\//)[0]!.split("\n").map((line) => line.replace(/^\s*\*\s?/, ""))),
  );
}

const files = ["engine", "rulebooks", "commands", "state", "worth"].flatMap((folder) => filesBelow(folder, [".ts"])).filter((path) => readPage(path).includes("@example"));

test("there are examples", () => expect(files.length).toBeGreaterThan(8));

describe.each(files)("examples in %s", (path) => {
  test.each(examplesOf(readPage(path)).map((lines) => [lines.join(" ").trim().slice(0, 60), lines] as const))("%s", async (_, lines) => {
    const names = {...((await import(/* @vite-ignore */ join(root, path))) as Record<string, unknown>), ...context[path]?.()};
    for (const {expression, expected} of expectationsOf(lines)) {
      const value = new Function(...Object.keys(names), `return (${expression});`)(...Object.values(names)) as unknown;
      if (expected !== null) expect(value, expression).toEqual(valueOf(expected));
    }
  });
});
