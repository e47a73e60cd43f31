// The chart is well-formed, holds what it should and nothing that could break out of it.
import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {chartBook} from "../../rulebooks/chart.ts";
import {thread} from "../../rulebooks/chart-thread.ts";
import {escapeXml, fitted, textWidth} from "../../rulebooks/svg.ts";
import {month} from "../../engine/month/month.ts";
import {validateBook} from "../../rulebooks/validate.ts";

const text = readFileSync(new URL("../bad/none.yaml", import.meta.url), "utf8");
const bookOf = (written: string) => validateBook(written, "book.yaml").book!;
const years = {from: "1950-01", until: "1999-12", width: 900};

// XML 1.0, sections 2.1 and 3.1: one root, every start tag has its end tag, no bare < or & in text or attributes.
function isWellFormed(svg: string): boolean {
  const open: string[] = [];
  const entity = /&(?!#\d+;)/;
  let rest = svg.trim();
  while (rest !== "") {
    const tag = /^<(\/?)([a-z]+)((?: [\w:-]+="[^"<]*")*)(\/?)>/i.exec(rest);
    if (!tag) {
      const words = /^[^<]+/.exec(rest)?.[0];
      if (words === undefined || entity.test(words) || open.length === 0) return false;
      rest = rest.slice(words.length);
      continue;
    }
    const [all, closing, name, attributes, empty] = tag;
    if (entity.test(attributes!)) return false;
    if (closing ? open.pop() !== name : false) return false;
    if (!closing && !empty) open.push(name!);
    rest = rest.slice(all.length);
    if (open.length === 0 && rest !== "") return false;
  }
  return open.length === 0;
}

test("a chart is well-formed and holds titles, names and years", () => {
  const svg = chartBook(bookOf(text), years);
  expect(isWellFormed(svg)).toBe(true);
  for (const words of ["Thistle and Pin, labels", "Zip", "brass teeth", "nylon teeth", "washing symbols", "04 Old Weir", ">1960<", ">1990<", "to 1982", "from 1970"]) expect(svg).toContain(words);
});

test("signs of markup in names stay text", () => {
  const svg = chartBook(bookOf(text.replace("name: brass teeth", `name: '<script>alert("1")</script> & "brass"'`).replace("title: Thistle and Pin, labels", "title: 'A </svg><b onload=x> & Sons'")), years);
  expect(isWellFormed(svg)).toBe(true);
  expect(svg).not.toContain("<script");
  expect(svg).not.toContain("<b onload");
  expect(escapeXml("\u0000a\u0007\ud800<\n")).toBe("a&#60;\n");
});

test("only what is asked for is drawn", () => {
  const svg = chartBook(bookOf(text), {...years, only: ["zip", "plants"]});
  expect(svg).toContain("brass teeth");
  expect(svg).toContain("Old Weir");
  expect(svg).not.toContain("washing symbols");
});

test("windows beyond the years are counted, not drawn", () => {
  const svg = chartBook(bookOf(text), {...years, from: "1990-01"});
  expect(svg).not.toContain("brass teeth");
  expect(svg).toContain("2 windows lie outside these years.");
});

test("an empty choice still is a chart", () => {
  expect(isWellFormed(chartBook(bookOf(text), {...years, only: ["fabrics"]}))).toBe(true);
});

test("what is known from memory is drawn in ochre", () => {
  const remembered = text.replace("source: { ref: rack, how: inferred }", "source: { ref: rack, how: memory }");
  const ochre = (written: string) => chartBook(bookOf(written), {...years, only: ["symbol"]}).split('stroke="#b0741c"').length;
  expect(ochre(remembered)).toBeGreaterThan(ochre(text));
});

test("stitches are full while a mark was usual, and thin where it came in", () => {
  const axis = {from: month(1950, 1), until: month(1999, 12)};
  const {markup} = thread({begins: [month(1960, 1), month(1980, 1)], ends: null}, 10, "#000", {axis, x: (m) => m - axis.from})!;
  const widths = [...markup.matchAll(/d="M([\d.]+) 10h[^"]*" stroke="#000" stroke-width="([\d.]+)"/g)].map(([, x, width]) => [Number(x), Number(width)] as const).sort((a, b) => a[0] - b[0]);
  expect(widths.length).toBeGreaterThan(3);
  expect(widths.map(([, width]) => width)).toEqual(widths.map(([, width]) => width).toSorted((a, b) => a - b));
  expect(widths[0]![0]).toBe(120);
});

test("months that are none, or run backwards, and impossible widths are refused", () => {
  const book = bookOf(text);
  expect(() => chartBook(book, {...years, from: "1950"})).toThrow(RangeError);
  expect(() => chartBook(book, {...years, until: "1949-12"})).toThrow(RangeError);
  expect(() => chartBook(book, {...years, width: Number.NaN})).toThrow(RangeError);
});

test("a name too long is cut to fit", () => {
  const cut = fitted("women's garment with narrow hem and without cuffs", 100, 12);
  expect(cut.endsWith("…")).toBe(true);
  expect(textWidth(cut, 12)).toBeLessThanOrEqual(100);
});
