// ticking ask with piped answers.
import {readFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {folder, smallWorld, ticking} from "./run-ticking.ts";

test("answers lead from question to question, wrong ones are asked again, and the garment is saved", async () => {
  const file = join(folder(), "0471");
  const answers = [
    "wickerlou", "wickerlow", "us", "trousers", // maker, once mistyped; market; type
    "3 2 21", "", // the rows, one
    "?", "purple", "back", // the next question: its list, a value that is none, one step back
    "3 2 21", "", "1", "done", // the rows again, the first value of the list
    file,
  ];
  const {code, out, err} = await ticking(["ask", ...smallWorld], `${answers.join("\n")}\n`);
  expect(err).toBe("");
  expect(code).toBe(0);
  expect(out).toContain("wickerlou is not one of them. Did you mean wickerlow?");
  expect(out).toMatch(/1 {2}grey tape \(grey-tape\)/);
  expect(out).toMatch(/purple is not one of the values of this mark/);
  expect(out).toMatch(/Most likely March 1962, \d\d in 100; no earlier than/);
  expect(out).toContain("certified appraisal.");
  expect(readFileSync(`${file}.yaml`, "utf8")).toBe('garment: "0471"\nmaker: wickerlow\nmarket: us\ntype: trousers\nsaw:\n  rows:\n    - 3 2 21\n  label: grey-tape\n');
});

test("the end of the input ends the talk with the whole finding, and nothing is saved", async () => {
  const {code, out} = await ticking(["ask", ...smallWorld, "--maker", "wickerlow", "--market", "us", "--type", "trousers"], "-\n");
  expect(code).toBe(0);
  expect(out).toContain("certified appraisal.");
  expect(out).not.toContain("Saved.");
});
