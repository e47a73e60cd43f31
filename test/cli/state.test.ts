// ticking sizes, grade and fit, run as a person runs them: on the rack and on a file.
import {readFileSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {folder, ticking} from "./run-ticking.ts";

const flat = (text: string) => text.replace(/\s+/g, " ");

test("a garment is measured, graded and fitted from the terminal; its history says so; an export answers the same", async () => {
  const data = join(folder(), "shop");
  const on = (...args: readonly string[]) => ticking([...args, "--data", data]);
  await ticking(["rack", "add", "--data", data, "rulebooks/demo/garments/0147.yaml"]);
  const measured = await on("sizes", "0147", "--lay", "waist=17", "--lay", "inseam=28", "--tag", "W 34 L 32", "--who", "Ana");
  expect([measured.code, measured.err]).toEqual([0, ""]);
  expect(flat(measured.out)).toContain("waist 17 in laid flat, 34 in all round");
  expect(flat(measured.out)).toContain("probably a shortened hem, by about 4 in");
  const graded = await on("grade", "0147", "--wear", "light", "--clean", "washed", "--flaw", "hole at the left knee");
  expect(flat(graded.out)).toContain("Very good: hole at the left knee (8 points). Without it: excellent.");
  const fit = await on("fit", "0147", "--body", "waist=33", "--body", "inside-leg=81cm");
  expect(flat(fit.out)).toContain("It would not fit: too short at the inseam.");
  expect((await ticking(["rack", "history", "0147", "--data", data])).out).toMatch(/Ana · measured[\s\S]*owner · looked over/);

  const file = join(folder(), "rack.json");
  await ticking(["rack", "export", "--data", data, "--format", "json", "-o", file]);
  const [there, here] = await Promise.all([on("sizes", "0147", "--json"), ticking(["sizes", file, "--json"])]);
  expect(here.out).toBe(there.out);
});

test("a rule is printed, changed and tried before anybody saves it", async () => {
  const data = join(folder(), "shop");
  const on = (...args: readonly string[]) => ticking([...args, "--data", data]);
  const rule = join(folder(), "rule.yaml");
  const printed = await on("grade", "--print-rule");
  expect(printed.code).toBe(0);
  writeFileSync(rule, printed.out.replace("plain: 8", "plain: 15"));
  await ticking(["rack", "add", "--data", data, "rulebooks/demo/garments/0147.yaml"]);
  await on("grade", "0147", "--wear", "light", "--clean", "washed", "--flaw", "hole at the left knee");
  expect(flat((await on("grade", "--all", "--rule", rule)).out)).toContain("0147 very good -> good.");
  expect(flat((await on("grade", "0147")).out)).toContain("Very good");
  writeFileSync(rule, readFileSync(rule, "utf8").replace("slight: 3", "slight: 90"));
  const refused = await on("grade", "0147", "--rule", rule);
  expect([refused.code, refused.err]).toEqual([2, expect.stringContaining("points that grow from slight to heavy")]);
});

test("slips are told with what would be right, and nothing is kept", async () => {
  const data = join(folder(), "shop");
  const on = (...args: readonly string[]) => ticking([...args, "--data", data]);
  await ticking(["rack", "add", "--data", data, "rulebooks/demo/garments/0147.yaml"]);
  const [point, flaw, body, none] = await Promise.all([on("sizes", "0147", "--lay", "waist=17", "--lay", "inseem=31"), on("grade", "0147", "--flaw", "hol at the knee"), on("fit", "0147", "--body", "waist"), on("grade", "9999")]);
  expect([point.code, flaw.code, body.code, none.code]).toEqual([2, 2, 2, 2]);
  expect(point.err).toContain("the points are waist, hip");
  expect(flaw.err).toContain("did you mean hole");
  expect((await on("grade", "0147")).err).toContain("nobody noted its state yet");
  expect(flat((await on("sizes", "0147")).out)).toContain("Nothing is measured yet.");
});
