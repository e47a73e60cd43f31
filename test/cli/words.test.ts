// Words for a terminal: nothing wider than the terminal, nothing that could steer it, brackets under the right characters.
import fc from "fast-check";
import {expect, test} from "vitest";
import {rowParts, type RowPart} from "../../commands/show-rows.ts";
import {perform} from "../../commands/command.ts";
import {examineGarment} from "../../commands/examine.ts";
import {readAnswer} from "../../cli/ask/answer.ts";
import {garmentYaml} from "../../cli/ask/save.ts";
import {writeFinding} from "../../cli/words/finding.ts";
import {weightBar} from "../../cli/words/ledger.ts";
import {monthPicture} from "../../cli/words/month-picture.ts";
import {Page} from "../../cli/words/page.ts";
import {paintFor} from "../../cli/words/paint.ts";
import {rowPicture, sayDoubts} from "../../cli/words/row-picture.ts";
import {columnsOf, plainText, wrap} from "../../cli/words/wrap.ts";
import type {Garment} from "../../engine/index.ts";
import {validateGarment} from "../../rulebooks/validate.ts";
import {world} from "../commands/small-world.ts";

const plain = paintFor({isTTY: false}, {});
const garment: Garment = {garment: "7", title: "Trousers", maker: "wickerlow", saw: {rows: ["3 (8/3) 21"], label: "grey-tape", "hem-tape": "absent"}};
const {finding} = perform(examineGarment, {garment}, world).answer!;

test("no line is wider than the room, and no word is lost", () => {
  fc.assert(
    fc.property(fc.array(fc.string({unit: fc.constantFrom("a", "é", "8", "…"), minLength: 1, maxLength: 60}), {minLength: 1, maxLength: 20}), fc.integer({min: 30, max: 120}), (words, width) => {
      const lines = wrap(words.join(" "), width, "  ");
      for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(width);
      expect(lines.join("").replaceAll(" ", "")).toBe(words.join(""));
    }),
  );
});

test("a page fits terminals of 40, 80 and 120 columns", () => {
  for (const width of [40, 80, 120]) {
    const page = new Page(width, plain);
    writeFinding(page, garment, finding, world, {months: true});
    expect(page.lines.filter((line) => columnsOf(line) > width)).toEqual([]);
    expect(page.lines.at(-1)).toMatch(/appraisal\.$/);
  }
});

test("text from a file cannot steer the terminal", () => {
  expect(plainText("a\u001b[31mb\u0007\u202ec\nd")).toBe("a[31mbc d");
  const page = new Page(80, plain);
  writeFinding(page, {...garment, title: "\u001b]0;x\u0007"}, finding, world, {months: false});
  expect(page.lines.join("\n")).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
});

test("a row is drawn with its fields bracketed, doubtful characters in brackets", () => {
  const parts: RowPart[] = [
    {field: "date", characters: [{shown: "3", doubtful: false}, {shown: "8/3", doubtful: true}], before: ""},
    {field: "plant", characters: [{shown: "2", doubtful: false}, {shown: "1", doubtful: false}], before: " "},
    {field: null, characters: [{shown: "7", doubtful: false}], before: "-"},
  ];
  expect(rowPicture(parts, 80)).toEqual([
    "3 (8)    2 1  - 7",
    "└─┬─┘    └┬┘",
    "date    plant",
  ]);
  expect(sayDoubts(parts)).toEqual(["(8) may be 8 or 3"]);
});

test("the parts of a row hold every character once, in order", () => {
  for (const row of finding.rows) {
    for (const reading of row.readings) {
      expect(rowParts(reading).flatMap(({characters}) => characters.map(({shown}) => shown))).toEqual(row.row.cells.map(({shown}) => shown));
    }
  }
});

test("the picture of the months is darkest at the likeliest month", () => {
  const lines = monthPicture(finding, 80);
  const march = lines.find((line) => line.startsWith("Mar"))!;
  expect(lines[0]).toMatch(/^ {4}1960s/);
  const column = 4 + 2 * ((1900 + Math.floor(finding.best.month / 12)) - 1960);
  expect(march.slice(column, column + 2)).toBe("██");
  expect(lines.filter((line) => columnsOf(line) > 80)).toEqual([]);
});

test("weight is none to five dashes", () => {
  expect([0, 0.1, 0.5, 1, 2, 9].map((bits) => weightBar(bits).length)).toEqual([0, 1, 2, 3, 4, 5]);
});

test("colour only for a terminal without NO_COLOR", () => {
  expect(paintFor({isTTY: true}, {}).strong("x")).toBe("\u001b[1mx\u001b[22m");
  expect(paintFor({isTTY: true}, {NO_COLOR: "1"}).strong("x")).toBe("x");
  expect(paintFor({}, {}).strong("x")).toBe("x");
});

test("answers at the prompt are numbers, names, several values, or a wish", () => {
  const question = {kind: "choice", values: [{id: "a", name: "A", says: null}, {id: "b", name: "B", says: null}]} as const;
  expect(readAnswer("2", question)).toEqual({kind: "value", value: "b"});
  expect(readAnswer("1|b", question)).toEqual({kind: "value", value: ["a", "b"]});
  expect(readAnswer("21", {kind: "repeat", values: []})).toEqual({kind: "value", value: "21"});
  expect(readAnswer("y", {kind: "presence", values: []})).toEqual({kind: "value", value: "present"});
  expect(["?", "-", "", "back", null].map((typed) => readAnswer(typed, question).kind)).toEqual(["list", "cannot see", "skip", "back", "done"]);
});

test("a saved garment reads back as it was, and says what could not be seen", () => {
  const written = garmentYaml({garment: "0471", maker: "wickerlow", saw: {rows: ["0382"], "button-stamp": "021"}}, ["label"]);
  expect(validateGarment(written, "0471.yaml").garment).toEqual({garment: "0471", maker: "wickerlow", saw: {rows: ["0382"], "button-stamp": "021"}, note: "Could not be seen: label."});
});
