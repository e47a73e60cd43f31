// Rows on the label of a maker of whom nothing is known, worked out by hand from docs/model.md, sections 4 and 5.
import {expect, test} from "vitest";
import {characters} from "../../../engine/cell/look-alike.ts";
import {readTypedRow, type PrintedRow} from "../../../engine/cell/printed-row.ts";
import {makeExaminer, month} from "../../../engine/index.ts";
import {chanceUnread} from "../../../engine/row/free.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {close} from "../../helper/close.ts";

const row = (text: string) => readTypedRow(text) as PrintedRow;
const [noDate, dated] = [0.6, 0.4];
const run = (length: number) => 0.5 ** (length + 1);
const [joined, inside] = [0.6, 0.97];
const each = 1 / 3;

// Closed form. Look-alikes are symmetric, so that the chances of all characters seen for one true character add up to 1.
test("all rows of one character together weigh what a run of one weighs", () => {
  close([...characters].reduce((sum, a) => sum + chanceUnread(row(a)), 0), noDate * run(1), {rel: 1e-12});
});

// Closed form: no date and two characters of noise, or a date of two figures with nothing before and after.
test("all rows of two characters together weigh what a run of two, or a date of two figures, weighs", () => {
  let total = 0;
  for (const a of characters) for (const b of characters) total += chanceUnread(row(a + b));
  close(total, noDate * run(2) * joined + dated * run(0) * run(0) * each * inside, {rel: 1e-12});
});

// Closed form: as above, or a date of three figures, or one of two beside one character of noise on either side.
test("all rows of three characters together weigh what the ways to print three weigh", () => {
  let total = 0;
  for (const a of characters) for (const b of characters) for (const c of characters) total += chanceUnread(row(a + b + c));
  const whole = noDate * run(3) * joined ** 2;
  const three = dated * run(0) ** 2 * each * inside ** 2;
  const two = 2 * dated * run(0) * run(1) * joined * each * inside;
  close(total, whole + three + two, {rel: 1e-12});
});

// A rule of the model, not of our numbers: a row that reads as a maker's own layout, code by code, speaks for that maker against one without a book.
test("rows in a maker's own layout speak for that maker, not for somebody without a book", () => {
  const examiner = makeExaminer(shippedBooks().books!, {today: month(2026, 6)});
  const {finding} = examiner.examine({garment: "1", maker: ["marrowfield", "unlisted"], saw: {rows: ["412-0318", "3 8 21"]}});
  const someone = finding!.makers.find(({maker}) => maker === null)!.probability;
  expect(someone).toBeGreaterThan(0);
  expect(someone).toBeLessThan(1e-6);
});
