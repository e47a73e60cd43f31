// ticking books, run as a person runs it.
import {readFileSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {folder, root, smallWorld, ticking} from "./run-ticking.ts";

const fixture = "test/fixtures/wickerlow.yaml";

test("check tells every problem and ends with 2; a specimen that reads wrongly is one", async () => {
  const path = join(folder(), "bad.yaml");
  const text = readFileSync(join(root, fixture), "utf8");
  writeFileSync(path, text.replace('"3 8": 1968-03', '"3 8": 1968-04'));
  const {code, out, err} = await ticking(["books", "check", fixture, path]);
  expect(code).toBe(2);
  expect(out.replace(/\s+/g, " ")).toContain("fine. Wickerlow Overall Works, a book for tests, edition 1");
  expect(err).toMatch(/bad\.yaml:\d+:\d+ /);
  expect(err).toMatch(/^1 problem to mend\.$/m);
});

test("compare says what changed", async () => {
  const path = join(folder(), "newer.yaml");
  writeFileSync(path, readFileSync(join(root, fixture), "utf8").replace("edition: 1", "edition: 2").replace("inside: 0.9", "inside: 0.8"));
  const {code, out} = await ticking(["books", "compare", fixture, path]);
  expect(code).toBe(0);
  expect(out).toMatch(/~ edition 1 → 2/);
  expect(out).toMatch(/~ inside of hem-tape 0\.9 → 0\.8/);
});

test("list, show and chart answer for a book named by id or path", async () => {
  const chart = join(folder(), "chart.svg");
  const [list, show, drawn, unknown] = await Promise.all([
    ticking(["books", "list", ...smallWorld, "--json"]),
    ticking(["books", "show", fixture, "label"]),
    ticking(["books", "chart", "wickerlow", ...smallWorld, "-o", chart]),
    ticking(["books", "show", "wickerlov", ...smallWorld]),
  ]);
  expect((JSON.parse(list.out) as {book: string}[]).map(({book}) => book)).toEqual(["wickerlow"]);
  expect(show.out).toContain("in use to Jun 1969…Jun 1970");
  expect(drawn.code).toBe(0);
  expect(readFileSync(chart, "utf8")).toMatch(/^<svg[^>]* xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
  expect(unknown.code).toBe(2);
  expect(unknown.err).toMatch(/did you mean wickerlow\?/);
});
