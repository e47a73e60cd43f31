// Text to plain values with their places, in bounded time and memory, whatever the bytes.
import {Composer, Lexer, LineCounter, Parser, type Document, type ParsedNode, type ParseOptions, type DocumentOptions, type SchemaOptions} from "yaml";
import type {Problem} from "../engine/problem.ts";
import * as say from "./file-problems.ts";
import {printPath, type Path, type Where} from "./place.ts";
import {readTree, type Spot} from "./read-tree.ts";

/** Largest file, bytes. */
export const mostBytes = 2_000_000;
/** Deepest nesting of lists and groups. */
export const mostDeep = 40;
/** Most words and signs of YAML: as many take a second or two and some hundred megabytes. */
export const mostEntries = 300_000;
const mostProblems = 200;

/** `problems` alone: nothing can be said of the content. With `value`: the content, and what is wrong with single entries. */
export type Parsed = {readonly value: unknown; readonly where: Where; readonly problems: readonly Problem[]} | {readonly value?: undefined; readonly where?: undefined; readonly problems: readonly Problem[]};

/**
 * Reads YAML 1.2 (and so JSON) into plain text, numbers, truth values, lists and entries.
 *
 * Aliases, tags of one's own, several documents and entries written twice are problems. Names of entries are always text, as printed: 021 stays "021".
 *
 * @param input      text, or bytes in UTF-8
 * @param file       name for the heads of problems
 * @param asPrinted  paths at which an unquoted number stays text, as printed: 0382 stays "0382"
 * @returns          never throws for any input; at most 200 problems and a count of the rest
 * @cost             refused above 2 MB, 40 levels or 300,000 signs; about a second for 500 KB
 */
export function parseYaml(input: string | Uint8Array, file: string, asPrinted: (path: Path) => boolean = () => false): Parsed {
  const bytes = typeof input === "string" ? byteLength(input) : input.length;
  if (bytes > mostBytes) return {problems: [say.tooLarge(file, bytes, mostBytes)]};
  const text = typeof input === "string" ? input : decode(input);
  if (text === null) return {problems: [say.notUtf8(file)]};

  const lines = new LineCounter();
  const at = (offset: number) => {
    const {line, col} = lines.linePos(offset);
    return `${file}:${line}:${col}`;
  };
  const composed = compose(text, lines, at);
  if ("problem" in composed) return {problems: [composed.problem]};

  const [document, second] = composed.documents;
  const lineOf = (offset: number) => lines.linePos(offset).line;
  const faults = composed.documents.slice(0, 1).flatMap(({errors, warnings}) => [...errors, ...warnings]).sort((a, b) => a.pos[0] - b.pos[0]);
  // One slip often sets off several complaints about the same line: the first tells most.
  const firstOfLine = faults.filter((fault, i) => i === 0 || lineOf(fault.pos[0]) !== lineOf(faults[i - 1]!.pos[0]));
  const problems = firstOfLine.map((fault) =>
    fault.code === "TAG_RESOLVE_FAILED" ? say.tagUsed(at(fault.pos[0])) : say.notYaml(at(fault.pos[0]), fault.code, fault.message),
  );
  if (second) problems.push(say.severalDocuments(at(second.range[0])));
  if (problems.length === 0 && !document?.contents) problems.push(say.nothingInside(file));
  if (problems.length > 0 || !document) return {problems: firstProblems(problems, file)};

  const tree = readTree(document.contents as ParsedNode, {at, lineOf, asPrinted});
  if (!tree.whole) return {problems: firstProblems(tree.problems, file)};
  return {value: tree.value, where: whereIn(tree.spot, at), problems: tree.problems};
}

/** Cuts a long list of problems, saying how many more there are. */
export function firstProblems(problems: readonly Problem[], file: string): Problem[] {
  if (problems.length <= mostProblems) return [...problems];
  return [...problems.slice(0, mostProblems), say.tooManyProblems(file, problems.length - mostProblems)];
}

function byteLength(text: string): number {
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    bytes += unit < 0x80 ? 1 : unit < 0x800 || (unit >= 0xd800 && unit < 0xe000) ? 2 : 3;
  }
  return bytes;
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", {fatal: true}).decode(bytes);
  } catch {
    return null;
  }
}

const options: ParseOptions & DocumentOptions & SchemaOptions = {version: "1.2", schema: "core", resolveKnownTags: false, uniqueKeys: false, strict: true};

// The reader recurses and compares keys pairwise: depth is limited while signs come in, and doubled keys are found in `readTree`.
function compose(text: string, lines: LineCounter, at: (offset: number) => string): {documents: Document.Parsed[]} | {problem: Problem} {
  const parser = new Parser(lines.addNewLine);
  lines.addNewLine(0);
  const tokens = [];
  let entries = 0;
  let faults = 0;
  for (const lexeme of new Lexer().lex(text)) {
    for (const token of parser.next(lexeme)) {
      tokens.push(token);
      if (token.type === "error" || token.type === "directive") faults++;
    }
    if (faults > mostProblems) break;
    const deepest = parser.stack.at(-1);
    if (parser.stack.length > mostDeep + 2) return {problem: say.tooDeep(at(deepest && "offset" in deepest ? deepest.offset : 0), mostDeep)};
    if (++entries > mostEntries) return {problem: say.tooManyEntries(at(deepest && "offset" in deepest ? deepest.offset : 0), mostEntries)};
  }
  for (const token of parser.end()) tokens.push(token);
  const documents: Document.Parsed[] = [];
  for (const document of new Composer(options).compose(tokens, true, text.length)) {
    if (documents.push(document as Document.Parsed) === 2) break;
  }
  return {documents};
}

function whereIn(root: Spot, at: (offset: number) => string): Where {
  return (path, part = "value") => {
    let spot = root;
    let steps = 0;
    for (; steps < path.length; steps++) {
      const next = spot.inside.get(path[steps]!);
      if (!next) break;
      spot = next;
    }
    const offset = part === "key" || steps < path.length ? spot.key : spot.value;
    return path.length === 0 ? at(offset) : `${at(offset)} ${printPath(path)}`;
  };
}
