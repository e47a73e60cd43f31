// Walks down a schema beside a value, to tell which entries are known at a place and what belongs there.
import type {z} from "zod";
import type {Path} from "./place.ts";

// The parts of a schema that this walk needs, as zod keeps them.
interface Def {
  readonly type: string;
  readonly innerType?: Node;
  readonly in?: Node;
  readonly options?: readonly Node[];
  readonly discriminator?: string;
  readonly shape?: Readonly<Record<string, Node>>;
  readonly catchall?: Node;
  readonly valueType?: Node;
  readonly element?: Node;
  readonly items?: readonly Node[];
  readonly values?: readonly unknown[];
}
interface Node {
  readonly def: Def;
  readonly description?: string | undefined;
}

/**
 * Names of entries that may stand at a path.
 * @param value  the whole value: it decides between forms that a kind tells apart
 * @returns      empty when any name may stand there
 */
export function knownKeys(schema: z.ZodType, value: unknown, path: Path): string[] {
  const keys = nodesAt(schema, value, path).flatMap(({def}) => (def.shape ? Object.keys(def.shape) : []));
  return [...new Set(keys)];
}

/** What belongs at a path, in the schema's own words; null when it does not say. */
export function meaningAt(schema: z.ZodType, value: unknown, path: Path): string | null {
  let here: Node[] = [schema as unknown as Node];
  let inside = value;
  for (const step of path) {
    here = here.flatMap((node) => peel(node, inside)).flatMap((node) => enter(node, step));
    inside = (inside as Record<string | number, unknown> | null | undefined)?.[step];
  }
  return here.map(said).find((text) => text !== null) ?? null;
}

function nodesAt(schema: z.ZodType, value: unknown, path: Path): Node[] {
  let here = peel(schema as unknown as Node, value);
  let inside = value;
  for (const step of path) {
    inside = (inside as Record<string | number, unknown> | null | undefined)?.[step];
    here = here.flatMap((node) => enter(node, step)).flatMap((node) => peel(node, inside));
  }
  return here;
}

// Takes off what surrounds a schema: optional, default, transformed, one of several.
function peel(node: Node, value: unknown): Node[] {
  const {def} = node;
  if (def.innerType) return peel(def.innerType, value);
  if (def.in) return peel(def.in, value);
  if (!def.options) return [node];
  const {discriminator} = def;
  const kind = discriminator === undefined ? undefined : (value as Record<string, unknown> | null | undefined)?.[discriminator];
  const fitting = def.options.filter((option) => discriminator !== undefined && option.def.shape?.[discriminator]?.def.values?.includes(kind));
  return (fitting.length > 0 ? fitting : def.options).flatMap((option) => peel(option, value));
}

function enter({def}: Node, step: string | number): Node[] {
  const next =
    typeof step === "number"
      ? (def.items?.[step] ?? def.element)
      : ((def.shape && Object.hasOwn(def.shape, step) ? def.shape[step] : undefined) ?? def.valueType ?? def.catchall);
  return next ? [next] : [];
}

function said(node: Node): string | null {
  return node.description ?? (node.def.innerType ? said(node.def.innerType) : node.def.in ? said(node.def.in) : null);
}
