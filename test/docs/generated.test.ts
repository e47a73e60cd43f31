// What is generated is what is committed: reference, pictures, and the answers printed in the guide. To mend: npm run docs, npm run pictures.
import {describe, expect, test} from "vitest";
import {refreshed, withAnswers} from "../../scripts/page/answers.ts";
import {pages} from "../../scripts/page/pages.ts";
import {pictures} from "../../scripts/picture/pictures.ts";
import {filesBelow, readPage} from "./pages.ts";

const mend = (script: string) => `to mend, look at what changed and run: npm run ${script}`;

test("the reference is up to date", async () => {
  const wanted = await pages();
  expect(filesBelow("docs/reference", [".md"]).sort()).toEqual(Object.keys(wanted).map((name) => `docs/reference/${name}`).sort());
  for (const [name, text] of Object.entries(wanted)) expect(readPage(`docs/reference/${name}`) === text, `docs/reference/${name} is old; ${mend("docs")}`).toBe(true);
});

test("the pictures are up to date", () => {
  const wanted = pictures();
  expect(filesBelow("docs/guide/pictures", [".svg"]).sort()).toEqual(Object.keys(wanted).map((name) => `docs/guide/pictures/${name}`).sort());
  for (const [name, svg] of Object.entries(wanted)) expect(readPage(`docs/guide/pictures/${name}`) === svg, `${name} is old; ${mend("pictures")}`).toBe(true);
});

describe("answers as printed", () => {
  test.each(Object.entries(withAnswers()))("in %s", (_, text) => expect(refreshed(text) === text, mend("docs")).toBe(true));
});
