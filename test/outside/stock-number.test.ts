// Source: the Federal Stock Number of 11 figures gave way to the National Stock Number of 13 figures on 30 September 1974.
import {expect, test} from "vitest";
import {month} from "../../engine/month/month.ts";
import {bookOf, briefOf, markOf} from "../helper/small-book.ts";
import {close} from "../helper/close.ts";

const book = bookOf({
  marks: {
    "stock-number": markOf({
      kind: "choice",
      stray: 0.02,
      values: {
        "eleven-figures": {name: "11 figures", window: {begins: ["1949-01", "1955-12"], ends: ["1974-09", "1976-12"]}},
        "thirteen-figures": {name: "13 figures", window: {begins: ["1974-09", "1976-01"]}},
      },
    }),
  },
});
const dated = (seen: string) => {
  const {posterior, first} = briefOf([book], {saw: {"stock-number": seen}, from: "1950-01", until: "1999-12"});
  const before = posterior.slice(0, month(1974, 9) - first).reduce((sum, p) => sum + p, 0);
  return {before, after: posterior.slice(month(1976, 12) - first + 1).reduce((sum, p) => sum + p, 0)};
};

test("eleven figures put a garment before the change-over of September 1974, but for strays (Federal Catalog System)", () => {
  const {before, after} = dated("eleven-figures");
  expect(before).toBeGreaterThan(0.93);
  // A stray counts evenly over 600 months, 276 of them after the last eleven figures.
  close(after, (0.02 * 276) / 600, {abs: 1e-9, because: "mass, sums to 1; every month's stray share is the mean of the shares"});
});

test("thirteen figures put it after (Federal Catalog System)", () => expect(dated("thirteen-figures").before).toBeLessThan(0.02));

test("either of the two says next to nothing where both are known", () => {
  const {posterior} = briefOf([book], {saw: {"stock-number": ["eleven-figures", "thirteen-figures"]}, from: "1957-01", until: "1999-12"});
  for (const p of posterior) close(p, 1 / posterior.length, {rel: 0.05});
});
