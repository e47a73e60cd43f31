// Turns the nodes of a YAML document into plain values, and remembers where each stood.
import {isAlias, isMap, isScalar, isSeq, type Node, type Scalar} from "yaml";
import type {Problem} from "../engine/problem.ts";
import {aliasUsed, duplicateKey, keyNotText, keyReserved} from "./file-problems.ts";
import {printPath, type Path} from "./place.ts";

/** Offsets in the text of a name and its value, and of everything inside. */
export interface Spot {
  readonly key: number;
  readonly value: number;
  readonly inside: ReadonlyMap<string | number, Spot>;
}

interface Reader {
  readonly at: (offset: number) => string;
  readonly lineOf: (offset: number) => number;
  readonly asPrinted: (path: Path) => boolean;
}

/**
 * Reads a node and all inside it.
 * @param root  nested no deeper than the caller allows: the reading recurses
 * @returns     `whole` is false when a value is missing because something stood for another entry (*)
 */
export function readTree(root: Node, {at, lineOf, asPrinted}: Reader): {value: unknown; spot: Spot; problems: Problem[]; whole: boolean} {
  const problems: Problem[] = [];
  let whole = true;
  const headAt = (offset: number, path: Path) => (path.length === 0 ? at(offset) : `${at(offset)} ${printPath(path)}`);

  const read = (node: unknown, path: Path, key: number | null): {value: unknown; spot: Spot} => {
    const start = offsetOf(node) ?? key ?? 0;
    const inside = new Map<string | number, Spot>();
    const spot = {key: key ?? start, value: start, inside};
    if (isAlias(node)) {
      whole = false;
      problems.push(aliasUsed(headAt(start, path), node.source));
      return {value: undefined, spot};
    }
    if (isScalar(node)) return {value: plain(node, asPrinted(path)), spot};
    if (isSeq(node)) {
      const value = node.items.map((item, i) => {
        const one = read(item, [...path, i], null);
        inside.set(i, one.spot);
        return one.value;
      });
      return {value, spot};
    }
    if (!isMap(node)) return {value: null, spot};
    const value: Record<string, unknown> = {};
    for (const pair of node.items) {
      const keyStart = offsetOf(pair.key) ?? start;
      const name = keyText(pair.key);
      if (name === null) {
        problems.push(keyNotText(headAt(keyStart, path)));
        continue;
      }
      const here = [...path, name];
      const first = inside.get(name);
      if (name === "__proto__") problems.push(keyReserved(headAt(keyStart, here), name));
      else if (first) problems.push(duplicateKey(headAt(keyStart, here), name, lineOf(first.key)));
      else {
        const one = read(pair.value, here, keyStart);
        inside.set(name, one.spot);
        value[name] = one.value;
      }
    }
    return {value, spot};
  };

  return {...read(root, [], null), problems, whole};
}

function offsetOf(node: unknown): number | null {
  return (node as Node | null)?.range?.[0] ?? null;
}

// `null` and `021` before a colon are names like any other, so the print counts and not the meaning.
function keyText(key: unknown): string | null {
  if (!isScalar(key)) return null;
  const text = key.source ?? String(key.value);
  return text === "" ? null : text;
}

const decimal = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;

function plain(node: Scalar, asPrinted: boolean): unknown {
  const {value, source} = node;
  if (typeof value !== "number") return value;
  return (asPrinted || !decimal.test(source ?? "") || !Number.isFinite(value)) && source !== undefined ? source : value;
}
