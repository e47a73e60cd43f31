// ticking examine, run as a person runs it.
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {findingShape} from "../../commands/finding-shape.ts";
import {folder, smallWorld, ticking} from "./run-ticking.ts";

const typed = ["--maker", "wickerlow", "--saw", "label=grey-tape", "--row", "3 8 21"];

test("a garment given in flags is answered in words, with every stage when asked", async () => {
  const {code, out, err} = await ticking(["examine", ...smallWorld, ...typed, "--months", "--trace"]);
  expect(err).toBe("");
  expect(code).toBe(0);
  expect(out).toMatch(/^ {2}Most likely March 1968, \d\d in 100$/m);
  expect(out).toMatch(/^ {2}no earlier than {4}March 1968$/m);
  expect(out).toContain("plant 21 (Eel Bridge)");
  expect(out).toMatch(/^ {2}Mar +██/m);
  expect(out).toMatch(/^ {2}━+ +rows of numbers: month 3 \(March\), year figure 8/m);
  expect(out).toMatch(/^ {2}7\. ledger$/m);
  expect(out.replace(/\s+/g, " ")).toContain("An estimate from the marks named here and the rule books' editions shown; no guarantee of authenticity and no certified appraisal.");
  expect(out).not.toContain("\u001b");
});

test("several files: the good ones as JSON, one a line; the bad ones with their problems, and 2", async () => {
  const here = folder();
  const [good, also, unknown, binary] = ["good.yaml", "also.json", "unknown.yaml", "binary.yaml"].map((name) => join(here, name)) as [string, string, string, string];
  writeFileSync(good, "garment: a\nmaker: wickerlow\nsaw: {rows: [3 8 21], label: grey-tape}\n");
  writeFileSync(also, JSON.stringify({garment: "b", maker: "wickerlow", saw: {rows: ["12 1 21"], label: "blue-satin"}}));
  writeFileSync(unknown, "garment: c\nmaker: wickerlow\nsaw: {lable: grey-tape}\n");
  writeFileSync(binary, Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0xff]));
  const {code, out, err} = await ticking(["examine", ...smallWorld, good, unknown, binary, join(here, "none.yaml"), also, "--json"]);
  expect(code).toBe(2);
  const findings = out.trim().split("\n").map((line) => findingShape.parse(JSON.parse(line)));
  expect(findings.map(({garment, best}) => [garment, best.month])).toEqual([["a", "1968-03"], ["b", "1971-12"]]);
  expect(err).toMatch(/unknown\.yaml saw\.lable: no rule book at hand knows a mark called lable; .*To fix: did you mean label\?/);
  expect(err).toMatch(/binary\.yaml: the file is not UTF-8 text; /);
  expect(err).toMatch(/none\.yaml: there is no such file/);
  expect(err).not.toMatch(/^\s+at /m);
});

test("nothing given, a wrong month and an unknown flag end with 2 and say why", async () => {
  const [nothing, month, flag] = await Promise.all([ticking(["examine"]), ticking(["examine", "--row", "3", "--today", "2026-13"]), ticking(["examine", "--mounths"])]);
  expect([nothing.code, month.code, flag.code]).toEqual([2, 2, 2]);
  expect(nothing.err).toMatch(/no garment is given; .*To fix: /);
  expect(month.err).toMatch(/^--today: “2026-13” is not a month; /);
  expect(flag.err).toContain("Did you mean --months?");
});
