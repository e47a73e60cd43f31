// Every link inside the project leads somewhere: from page to page, and from a problem's words to the guide.
import {existsSync} from "node:fs";
import {dirname, join, normalize} from "node:path/posix";
import {expect, test} from "vitest";
import {anchorsOf, filesBelow, linksOf, readPage, root} from "./pages.ts";

/** What is wrong with a target; null when it is there. */
function brokenLink(from: string, target: string): string | null {
  const [path = "", anchor] = target.split("#");
  const file = path === "" ? from : normalize(join(dirname(from), path));
  if (file.startsWith("..") || !existsSync(join(root, file))) return `${from}: ${target} leads to no file`;
  if (anchor !== undefined && !anchorsOf(file).has(anchor)) return `${from}: ${target} names a heading that is not there`;
  return null;
}

const pages = filesBelow("", [".md"]);

test("links and pictures of every page lead to files and headings that are there", () => {
  expect(pages).toContain("README.md");
  const broken = pages.flatMap((page) => linksOf(page).filter((target) => !/^[a-z]+:/.test(target)).flatMap((target) => brokenLink(page, target) ?? []));
  expect(broken).toEqual([]);
});

test("pages of the docs that source files and problems name are there", () => {
  const sources = ["engine", "rulebooks", "commands", "cli", "scripts", "test", "bench"].flatMap((folder) => filesBelow(folder, [".ts", ".mjs", ".py"]));
  const broken = sources.flatMap((path) =>
    [...readPage(path).matchAll(/docs\/[\w/-]+\.(?:md|yaml|csv)(?:#[\w-]+)?/g)].flatMap(([target]) => (brokenLink("", target) ? [`${path}: ${target}`] : [])),
  );
  expect(broken).toEqual([]);
});

test("every page of the guide and every decision is linked from somewhere", () => {
  const linked = new Set(pages.flatMap((page) => linksOf(page).map((target) => normalize(join(dirname(page), target.split("#")[0]!)))));
  const lost = pages.filter((page) => /^docs\/(guide|decisions|reference)\//.test(page) && !linked.has(page));
  expect(lost).toEqual([]);
});
