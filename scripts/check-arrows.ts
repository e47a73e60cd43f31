// Checks who imports whom: `node scripts/run.mjs scripts/check-arrows.ts`. The same rules are a test, test/architecture/arrows.test.ts.
import {existsSync, readFileSync, readdirSync} from "node:fs";
import {join, normalize} from "node:path/posix";
import {fileURLToPath} from "node:url";

/** One import that must not be, or one word that must not stand there. */
export interface Breach {
  /** file:line */
  readonly at: string;
  readonly what: string;
  readonly why: string;
}

/** A source file by its path from the root of the project. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

interface Folder {
  /** Other top folders that it may import. */
  readonly folders: readonly string[];
  /** Packages that it may import; "*" is any, node's own included. */
  readonly packages: readonly string[];
  readonly why: string;
}

/** Packages made for a browser. */
const webPackages = ["onnxruntime-web", "react", "react-dom", "wouter", "idb", "@tanstack/react-virtual", "csv-parse", "zod", "vite", "@vitejs/plugin-react", "@fontsource-variable/source-serif-4", "@fontsource-variable/instrument-sans"];

/** All that the commands and the screens may know of the store: its shapes and its interface, never a driver. */
const storeFace = ["store/model.ts", "store/store.ts"];

const folders: Readonly<Record<string, Folder>> = {
  engine: {folders: [], packages: ["zod"], why: "the engine is pure arithmetic that must run anywhere, and stands below everything else"},
  rulebooks: {folders: ["engine"], packages: ["yaml", "zod", "node:fs", "node:path", "node:url"], why: "rule books are data with a loader: they know the engine and nothing above it"},
  reader: {folders: ["engine"], packages: ["zod", "onnxruntime-web", "sharp", "node:fs", "node:url"], why: "a reader turns a photo into rows with doubt; it knows no book, no store and no screen"},
  state: {folders: ["engine"], packages: ["zod"], why: "measures, flaws and grades are pure rules that must run anywhere"},
  worth: {folders: ["engine", "state"], packages: ["zod"], why: "prices are pure arithmetic that must run anywhere"},
  paper: {folders: ["engine", "rulebooks", "store", "state", "worth", "commands"], packages: ["*"], why: "paper is made from what is known of a garment, and knows no server and no screen"},
  store: {folders: ["engine", "reader", "state", "worth"], packages: ["*"], why: "what is kept must open without today's rule books, and knows nothing of those who show it"},
  commands: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth"], packages: ["zod", "csv-parse"], why: "commands serve the terminal, a server and a browser alike: they know neither files nor screens"},
  server: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "paper", "commands"], packages: ["*"], why: "the server turns requests into commands; it knows neither the terminal nor the screens"},
  web: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "commands"], packages: webPackages, why: "the screens run in a browser, and talk to the server over HTTP alone"},
  cli: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "paper", "commands", "server"], packages: ["*"], why: "the terminal builds on commands; tests and measurements build on it, not the other way round"},
  scripts: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "paper", "commands", "server", "web", "cli"], packages: ["*"], why: "nothing but tests and measurements may import tests and measurements"},
  bench: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "paper", "commands", "server", "web", "cli", "scripts", "test"], packages: ["*"], why: ""},
  test: {folders: ["engine", "rulebooks", "store", "reader", "state", "worth", "paper", "commands", "server", "web", "cli", "scripts", "bench"], packages: ["*"], why: ""},
};

/** The only files of folders that otherwise run anywhere that may touch the disk, and why they are the only ones. */
const diskFiles: Readonly<Record<string, {files: readonly string[]; why: string}>> = {
  rulebooks: {files: ["rulebooks/load.ts"], why: "so that books can be checked anywhere"},
  reader: {files: ["reader/node.ts"], why: "so that photos can be read in a browser"},
};

/** Inside the engine a file may import from its own line and from lines above it. */
const engineOrder = [
  ["units", "problem", "nearest"],
  ["num"],
  ["month"],
  ["rule"],
  ["window"],
  ["cell"],
  ["scheme"],
  ["row", "mark"],
  ["range"],
  ["infer", "explain", "next"],
  ["index"],
];
/** Folders of one line that do not know each other. */
const strangers = [["row", "mark"]];

/** What the pure part must not touch. */
const impure = /\bnode:|\b(?:Date|Math\.random|console|process|performance|globalThis|setTimeout|setInterval|setImmediate|queueMicrotask|fetch|crypto)\b(?=\s*[.([])|\bnew Date\b/;

/** Every breach in some source files. */
export function breaches(files: readonly SourceFile[]): Breach[] {
  const imports = files.map((file) => ({file, targets: importsOf(file)}));
  return [
    ...imports.flatMap(({file, targets}) => targets.flatMap(({line, target}) => breachOf(file.path, target).map((breach) => ({at: `${file.path}:${line}`, ...breach})))),
    ...files.filter(({path}) => path.startsWith("engine/")).flatMap(impureWords),
    ...circles(new Map(imports.map(({file, targets}) => [file.path, targets.map(({target}) => target)]))),
  ];
}

/** Every .ts and .tsx file of the project. */
export function sourceFiles(): SourceFile[] {
  const root = fileURLToPath(new URL("..", import.meta.url));
  const below = (folder: string): string[] =>
    readdirSync(join(root, folder), {withFileTypes: true}).flatMap((entry) => {
      const path = `${folder}/${entry.name}`;
      return entry.isDirectory() ? below(path) : /\.tsx?$/.test(path) ? [path] : [];
    });
  return Object.keys(folders).filter((folder) => existsSync(join(root, folder))).flatMap(below).map((path) => ({path, text: readFileSync(join(root, path), "utf8")}));
}

/** What a file imports, types included; own files by their path from the root. */
function importsOf({path, text}: SourceFile): {line: number; target: string}[] {
  const found = [...text.matchAll(/^(?:import|export)\b[^;"'`]*?\bfrom\s*"([^"]+)"|^import\s*"([^"]+)"|\bimport(?:\.meta\.resolve)?\(\s*"([^"]+)"/gm)];
  return found.map((match) => {
    const name = (match[1] ?? match[2] ?? match[3])!;
    return {line: text.slice(0, match.index).split("\n").length, target: name.startsWith(".") ? normalize(join(path, "..", name)) : name};
  });
}

function breachOf(from: string, target: string): Omit<Breach, "at">[] {
  const folder = topOf(from);
  const rules = folders[folder]!;
  const what = `${from} imports ${target}`;
  if (!(topOf(target) in folders) || !target.includes("/")) {
    const [scope, name] = target.split("/");
    const pack = target.startsWith("@") ? `${scope}/${name}` : scope!;
    if (!rules.packages.includes("*") && !rules.packages.includes(pack)) return [{what, why: rules.why}];
    const disk = diskFiles[folder];
    if (disk && pack.startsWith("node:") && !disk.files.includes(from)) return [{what, why: `only ${disk.files.join(", ")} may touch the disk, ${disk.why}`}];
    return [];
  }
  const to = topOf(target);
  if (to !== folder && !rules.folders.includes(to)) return [{what, why: rules.why}];
  if (to === "store" && ["commands", "paper", "web"].includes(folder) && !storeFace.includes(target)) return [{what, why: `of the store, ${folder} knows ${storeFace.join(" and ")} alone, so that another driver can take its place`}];
  if (folder === "web" && target === "rulebooks/load.ts") return [{what, why: "books reach the screens as JSON"}];
  if (to !== folder) return [];
  return folder === "engine" ? insideEngine(from, target, what) : [];
}

function insideEngine(from: string, target: string, what: string): Omit<Breach, "at">[] {
  const [own, other] = [partOf(from), partOf(target)];
  const [ownLine, otherLine] = [own, other].map((part) => engineOrder.findIndex((line) => line.includes(part)));
  if (ownLine === -1 || otherLine === -1) return [{what, why: "every part of the engine has its line in scripts/check-arrows.ts"}];
  if (otherLine! > ownLine!) return [{what, why: `${other} stands above ${own}: arrows in the engine go one way, so that each part can be read knowing only the ones below`}];
  if (own !== other && strangers.some((pair) => pair.includes(own) && pair.includes(other))) return [{what, why: `${own} and ${other} do not know each other: what both need stands below them`}];
  return [];
}

const topOf = (path: string) => path.split("/")[0]!;
const partOf = (path: string) => path.split("/")[1]!.replace(/\.ts$/, "");

function impureWords({path, text}: SourceFile): Breach[] {
  return text.split("\n").flatMap((line, i) => {
    const word = impure.exec(withoutWords(line))?.[0];
    return word === undefined ? [] : [{at: `${path}:${i + 1}`, what: `${path} uses ${word}`, why: "the engine has no clock, no chance, no screen and no files: they are arguments, so that the same input always gives the same answer"}];
  });
}

const withoutWords = (line: string) => line.replace(/^\s*(?:\*|\/\*|\/\/).*/, "").replace(/\s\/\/.*/, "").replace(/"(?:[^"\\]|\\.)*"/g, '""');

/** Files that import each other round and round, types included. */
function circles(graph: ReadonlyMap<string, readonly string[]>): Breach[] {
  const found: Breach[] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    if (trail.includes(path)) {
      const circle = [...trail.slice(trail.indexOf(path)), path];
      found.push({at: path, what: circle.join(" -> "), why: "files in a circle can only be understood all at once"});
      return;
    }
    if (done.has(path)) return;
    for (const target of graph.get(path) ?? []) walk(target, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) walk(path, []);
  return found;
}

/** A breach as one line for people. */
export const printBreach = ({at, what, why}: Breach) => `${at}: ${what}; ${why}`;

if (process.argv[1]?.endsWith("scripts/check-arrows.ts")) {
  const found = breaches(sourceFiles());
  for (const breach of found) console.log(printBreach(breach));
  console.log(`${found.length} ${found.length === 1 ? "arrow" : "arrows"} the wrong way`);
  process.exitCode = found.length > 0 ? 1 : 0;
}
