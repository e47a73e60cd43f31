// ticking batch, run as a person runs it: order, line numbers, memory, workers, exit codes.
import {readFileSync, readdirSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {folder, smallWorld, ticking} from "./run-ticking.ts";

const header = "garment,maker,rows,label,button-stamp";
const line = (i: number) => `g${i},wickerlow,${1 + (i % 12)} ${i % 10} ${i % 2 ? 21 : 38},${i % 3 ? "grey-tape" : "blue-satin"},${i % 2 ? 21 : 38}`;

test("bad lines are told by their number and set aside; the others are dated, in order", async () => {
  const here = folder();
  const lines = [header, line(1), "g2,wickerlow,3 8 21,gray-tape,", "", 'g3,wickerlow,"3 8 21', 'g4,wickerlow,"3 8\n21",grey-tape,', "g5,wickerlow,3 8 21", line(6)];
  const bytes = Buffer.concat([Buffer.from(`\ufeff${lines.join("\r\n")}\r\n`), Buffer.from([0x67, 0xe9, 0x0a]), Buffer.from(line(7))]);
  writeFileSync(join(here, "in.csv"), bytes);
  const {code, out, err} = await ticking(["batch", join(here, "in.csv"), ...smallWorld, "-o", join(here, "out.csv"), "--aside", join(here, "bad.jsonl"), "--strict"]);
  expect(code).toBe(2);
  expect(out).toBe("");
  const aside = readFileSync(join(here, "bad.jsonl"), "utf8").trim().split("\n").map((one) => JSON.parse(one) as {line: number; text: string; problems: {code: string}[]});
  expect(aside.map((one) => [one.line, one.problems[0]!.code])).toEqual([[3, "garment/unknown-value"], [5, "batch/open-quote"], [8, "batch/cell-count"], [10, "batch/not-text"]]);
  for (const number of [3, 5, 8, 10]) expect(err).toMatch(new RegExp(`in\\.csv:${number}[ :]`));
  expect(err).toMatch(/^8 read, 4 dated, 4 set aside; /m);
  const dated = readFileSync(join(here, "out.csv"), "utf8");
  expect(dated.match(/^g\d/gm)).toEqual(["g1", "g4", "g6", "g7"]);
  expect(dated.startsWith(`${header},best,probability,no_earlier,no_later,range90,makers,odd\r\n`)).toBe(true);
  expect(readdirSync(here).sort()).toEqual(["bad.jsonl", "in.csv", "out.csv"]);
});

test("20,000 lines stream through in order with flat memory, and two workers give the same bytes", async () => {
  const here = folder();
  const write = (name: string, count: number) => writeFileSync(join(here, name), `${header}\n${Array.from({length: count}, (_, i) => line(i)).join("\n")}\n`);
  write("short.csv", 2_000);
  write("long.csv", 20_000);
  const run = (name: string, out: string, ...more: string[]) => ticking(["batch", join(here, name), ...smallWorld, "-o", join(here, out), ...more], "", {TICKING_DEBUG: "1"});
  const short = await run("short.csv", "short.out");
  const long = await run("long.csv", "long.out");
  const two = await run("long.csv", "two.out", "--workers", "2");
  expect([short.code, long.code, two.code]).toEqual([0, 0, 0]);
  expect(long.err).toMatch(/^20,000 read, 20,000 dated, 0 set aside; /);
  const memory = ({err}: {err: string}) => Number(/Memory at most (\d+) MB/.exec(err)![1]);
  expect(memory(long)).toBeLessThan(memory(short) + 120); // ten times the lines; the allowance is for garbage not yet collected
  const result = readFileSync(join(here, "long.out"), "utf8");
  expect(readFileSync(join(here, "two.out"), "utf8")).toBe(result);
  expect(result.match(/^g\d+/gm)).toEqual(Array.from({length: 20_000}, (_, i) => `g${i}`));
});

test("a list comes from stdin and goes to stdout", async () => {
  const garments = Array.from({length: 3}, (_, i) => JSON.stringify({garment: `g${i}`, maker: "wickerlow", saw: {rows: ["3 8 21"], label: "grey-tape"}}));
  const {code, out, err} = await ticking(["batch", "-", ...smallWorld, "--whole"], garments.join("\n"));
  expect(code).toBe(0);
  expect(out.trim().split("\n").map((one) => (JSON.parse(one) as {finding: {best: {month: string}}}).finding.best.month)).toEqual(["1968-03", "1968-03", "1968-03"]);
  expect(err).toMatch(/^3 read, 3 dated, 0 set aside/);
});

test("what is no table, an unknown column, and the input as output are refused before anything is written", async () => {
  const here = folder();
  const path = join(here, "in.csv");
  writeFileSync(path, `${header},lable\n`);
  const wide = Buffer.from("\ufeffgarment,rows\r\n", "utf16le");
  const [column, same, utf16, list, missing] = await Promise.all([
    ticking(["batch", path, ...smallWorld]),
    ticking(["batch", path, ...smallWorld, "-o", path]),
    ticking(["batch", "-", ...smallWorld], wide),
    ticking(["batch", "-", ...smallWorld], '[{"garment":"7"}]'),
    ticking(["batch", join(here, "none.csv"), ...smallWorld]),
  ]);
  expect([column, same, utf16, list, missing].map(({code}) => code)).toEqual([2, 2, 2, 2, 2]);
  expect(column.err).toMatch(/in\.csv:1: the column “lable” is no mark .*did you mean label\?/);
  expect(same.err).toMatch(/the result would go into the file that is being read/);
  expect(utf16.err).toMatch(/^stdin: the file is UTF-16 text, not UTF-8/);
  expect(list.err).toMatch(/^stdin: the file is one JSON list/);
  expect(missing.err).toMatch(/none\.csv: there is no such file/);
});
