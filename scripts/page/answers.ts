// Printed answers in the docs: a comment names the command, the block below it holds what it prints.
//
//   <!-- answer: ticking examine garment.yaml -->                             the whole answer
//   <!-- answer from "What counted" until "Where to look": ticking … -->      from one line to before another
//   <!-- file: docs/guide/examples/rack.csv -->                               the file itself
import {spawnSync} from "node:child_process";
import {readdirSync, readFileSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {docsToday} from "../picture/pictures.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const answer = /<!-- answer(?: from "([^"]+)")?(?: until "([^"]+)")?: (ticking [^\n]+?) -->\n```text\n[\s\S]*?```/g;
const file = /<!-- file: (\S+) -->\n```([^\n]*)\n[\s\S]*?```/g;

/** The hand-written pages that show answers: path to text. */
export function withAnswers(): Record<string, string> {
  const guide = readdirSync(`${root}docs/guide`).filter((name) => name.endsWith(".md")).map((name) => `docs/guide/${name}`);
  const texts = ["README.md", ...guide].map((name) => [name, readFileSync(root + name, "utf8")] as const);
  return Object.fromEntries(texts.filter(([, text]) => text.search(answer) >= 0 || text.search(file) >= 0));
}

/** A page with every answer as it is printed, and every file as it is, today. */
export function refreshed(text: string): string {
  const filed = text.replace(file, (_, path: string, language: string) => `<!-- file: ${path} -->\n\`\`\`${language}\n${readFileSync(root + path, "utf8").trimEnd()}\n\`\`\``);
  return filed.replace(answer, (whole, from: string | undefined, until: string | undefined, command: string) => {
    const head = whole.slice(0, whole.indexOf("\n"));
    return `${head}\n\`\`\`text\n${stretch(answerOf(command), from, until)}\n\`\`\``;
  });
}

const remembered = new Map<string, string>();

/** What a command prints, as of the month that the docs are made for. */
function answerOf(command: string): string {
  let answer = remembered.get(command);
  if (answer === undefined) {
    const words = command.match(/"[^"]*"|\S+/g)!.slice(1).map((word) => word.replace(/^"|"$/g, ""));
    const {status, stdout, stderr} = spawnSync(process.execPath, ["bin/ticking.mjs", ...words, "--today", docsToday], {cwd: root, encoding: "utf8", env: {...process.env, NO_COLOR: "1"}});
    if (status !== 0) throw new Error(`${command} ended with ${status}: ${stderr}`);
    remembered.set(command, (answer = stdout));
  }
  return answer;
}

function stretch(answer: string, from: string | undefined, until: string | undefined): string {
  const lines = answer.split("\n");
  const find = (start: string, after: number) => {
    const at = lines.findIndex((line, i) => i >= after && line.trim().startsWith(start));
    if (at < 0) throw new Error(`no line of the answer begins with “${start}”`);
    return at;
  };
  const first = from === undefined ? 0 : find(from, 0);
  const last = until === undefined ? lines.length : find(until, first + 1);
  return lines.slice(first, last).join("\n").replace(/^\n+|\s+$/g, "");
}
