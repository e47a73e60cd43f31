// Reads the Markdown of the project: its pages, their anchors, links and code blocks.
import {readdirSync, readFileSync} from "node:fs";
import {join} from "node:path/posix";
import {fileURLToPath} from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));

const leftOut = new Set(["node_modules", ".git", "dist", ".cache", "data"]);

/** Paths of files below a folder whose names end in one of some endings, from the root of the project. */
export function filesBelow(folder: string, endings: readonly string[]): string[] {
  return readdirSync(join(root, folder), {withFileTypes: true}).flatMap((entry) => {
    const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return leftOut.has(entry.name) ? [] : filesBelow(path, endings);
    return endings.some((ending) => path.endsWith(ending)) ? [path] : [];
  });
}

export const readPage = (path: string): string => readFileSync(join(root, path), "utf8");

export interface Block {
  /** page:line of the first line inside. */
  readonly at: string;
  /** What stands behind the fence: "ts run", "yaml book". */
  readonly kind: string;
  readonly code: string;
}

/** Fenced code blocks of a page. */
export function blocksOf(path: string): Block[] {
  const blocks: Block[] = [];
  const lines = readPage(path).split("\n");
  for (let i = 0; i < lines.length; i++) {
    const fence = /^```(.*)$/.exec(lines[i]!);
    if (!fence) continue;
    const end = lines.indexOf("```", i + 1);
    blocks.push({at: `${path}:${i + 2}`, kind: fence[1]!.trim(), code: lines.slice(i + 1, end).join("\n")});
    i = end < 0 ? lines.length : end;
  }
  return blocks;
}

const prose = (path: string) => readPage(path).replace(/^```[\s\S]*?^```$/gm, "");

/** Anchors that a page offers: its headings as GitHub names them, and ids set by hand. */
export function anchorsOf(path: string): Set<string> {
  const text = prose(path);
  const anchors = new Set<string>([...text.matchAll(/<a id="([^"]+)">/g)].map(([, id]) => id!));
  const times = new Map<string, number>();
  for (const [, heading] of text.matchAll(/^#{1,6} +(.+)$/gm)) {
    const slug = slugOf(heading!);
    const before = times.get(slug) ?? 0;
    times.set(slug, before + 1);
    anchors.add(before === 0 ? slug : `${slug}-${before}`);
  }
  return anchors;
}

const slugOf = (heading: string) =>
  heading.replace(/\[([^\]]*)\]\([^)]*\)/g, "$1").replace(/&lt;/g, "<").toLowerCase().replace(/[^\p{L}\p{N}\s_-]/gu, "").trim().replace(/\s/g, "-");

/** Links and pictures of a page, outside code. */
export function linksOf(path: string): string[] {
  const text = prose(path).replace(/`[^`\n]*`/g, "");
  return [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target!);
}
