// Help: at once, everywhere, with examples whose flags exist.
import {expect, test} from "vitest";
import {verbs} from "../../cli/verbs.ts";
import {ticking} from "./run-ticking.ts";

test("the main help names every verb; exit codes are explained; an unknown verb gets the nearest one", async () => {
  const [help, codes, unknown, version] = await Promise.all([ticking(["--help"]), ticking(["help", "exit-codes"]), ticking(["exmine"]), ticking(["--version"])]);
  expect([help.code, codes.code, unknown.code, version.code]).toEqual([0, 0, 2, 0]);
  for (const {verb, summary} of verbs) expect(help.out.replace(/\s+/g, " ")).toContain(`${verb} ${summary}`);
  expect(codes.out).toMatch(/^ {2}2 {2}the input needs mending/m);
  expect(unknown.err).toContain("Did you mean examine?");
  expect(version.out).toMatch(/^\d+\.\d+\.\d+\n$/);
});

test("every flag in an example of the help is a flag of its verb", async () => {
  for (const {verb, load} of verbs) {
    const command = (await load())();
    const texts: string[] = [];
    const all = [command, ...command.commands];
    for (const one of all) one.configureOutput({writeOut: (text) => void texts.push(text)}).outputHelp();
    const known = new Set(all.flatMap(({options}) => options.flatMap(({long, short}) => [long, short])));
    const examples = texts.flatMap((text) => text.split("\nExamples:\n")[1]?.trim().split("\n") ?? []);
    expect(examples.length, verb).toBeGreaterThan(0);
    for (const example of examples) {
      expect(example, verb).toMatch(new RegExp(`ticking ${verb}|> rack.csv$`));
      for (const flag of example.match(/ --?[a-z-]+/g) ?? []) expect(known, example).toContain(flag.trim());
    }
  }
});
