// Pages of the entries of a file, made from its JSON Schema: which entries there are, what stands in them, what they mean.
import type {JsonSchema} from "../../rulebooks/json-schema.ts";
import {cell, code, page, table} from "./markdown.ts";

interface Node {
  readonly type?: string;
  readonly $ref?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Node | boolean;
  readonly items?: Node;
  readonly prefixItems?: readonly Node[];
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly pattern?: string;
  readonly $defs?: Readonly<Record<string, Node>>;
}

interface Section {
  readonly path: string;
  readonly node: Node;
  /** One of several forms that can stand at the place. */
  readonly form?: boolean;
}

/**
 * A page with one table for every group of entries.
 * @param inside  another page that tells what stands inside the entries; told on this page when left out
 */
export function schemaPage(title: string, schema: JsonSchema, from: string, introduction: string, inside = ""): string {
  const root = schema as Node;
  const shared = Object.entries(root.$defs ?? {}).map(([name, node]) => ({path: name, node}));
  const sections = inside !== "" ? [{path: "", node: root}] : joined([{path: "", node: root}, ...shared].flatMap(({path, node}) => sectionsOf(path, node)));
  const printed = sections.map((section) => printSection(section, root.$defs ?? {}).replaceAll("](#", `](${inside}#`));
  return page(title, from, [introduction, ...printed]);
}

// Places with the same entries stand under one heading, and one-entry forms of the same place in one table.
function joined(sections: readonly Section[]): Section[] {
  const merged = new Map<string, Section>();
  for (const {path, node, form} of sections) {
    const [only, ...more] = Object.entries(node.properties!);
    const lone = form && only && more.length === 0 ? {[only[0]]: {...only[1], description: node.description ?? only[1].description}} : null;
    const key = lone ? `one of ${path}` : JSON.stringify(node);
    const before = merged.get(key);
    if (lone) merged.set(key, {path, node: {properties: {...before?.node.properties, ...lone}}});
    else if (!before) merged.set(key, {path, node});
    else if (!before.path.split(", ").includes(path)) merged.set(key, {path: `${before.path}, ${path}`, node});
  }
  return [...merged.values()];
}

// A node and every group of named entries below it, each once.
function sectionsOf(path: string, node: Node): Section[] {
  const own = node.properties ? [{path, node}] : [];
  const {kinds, common} = splitKinds(node);
  if (kinds.length > 0) return [{path: `${path} of every kind`, node: common}, ...kinds.flatMap(({name, rest}) => sectionsOf(`${path} (${name})`, rest))];
  return [...own, ...entriesOf(path, node)];
}

function entriesOf(path: string, node: Node): Section[] {
  const named = Object.entries(node.properties ?? {}).flatMap(([key, child]) => sectionsOf(path === "" ? key : `${path}.${key}`, child));
  const each = typeof node.additionalProperties === "object" ? sectionsOf(`${path}.<name>`, node.additionalProperties) : [];
  const listed = node.items ? sectionsOf(`${path}[]`, node.items) : [];
  const forms = (node.anyOf ?? node.oneOf ?? []).filter((form) => form.properties || form.items || typeof form.additionalProperties === "object").flatMap((form) => sectionsOf(path, form).map((one) => (one.path === path ? {...one, form: true} : one)));
  return [...named, ...each, ...listed, ...forms];
}

/** Forms that differ by `kind`: what all of them have, and what each has besides. */
function splitKinds({oneOf = []}: Node): {kinds: {name: string; rest: Node}[]; common: Node} {
  const kinds = oneOf.filter(({properties}) => properties?.kind?.const !== undefined);
  if (kinds.length < 2) return {kinds: [], common: {}};
  const shared = Object.entries(kinds[0]!.properties!).filter(([key, node]) => kinds.every(({properties}) => JSON.stringify(properties![key]) === JSON.stringify(node)));
  const keys = new Set(shared.map(([key]) => key));
  const rest = kinds.map((kind) => ({
    name: String(kind.properties!.kind!.const),
    rest: {...kind, properties: Object.fromEntries(Object.entries(kind.properties!).filter(([key]) => !keys.has(key)))},
  }));
  return {kinds: rest, common: {properties: Object.fromEntries(shared), required: kinds[0]!.required}};
}

function printSection({path, node}: Section, shared: Readonly<Record<string, Node>>): string {
  const rows = Object.entries(node.properties!).map(([key, child]) => [
    code(key), cell(kindOf(child)), (node.required ?? []).includes(key) ? "needed" : child.default !== undefined ? `${code(JSON.stringify(child.default))} when left out` : "", cell(meaningOf(child, shared)),
  ]);
  const says = node.description ? `${node.description[0]!.toUpperCase()}${node.description.slice(1)}.` : "";
  return [`## ${path === "" ? "The file" : path.replaceAll("<", "&lt;")}`, says, table(["entry", "what stands there", "", "meaning"], rows)].filter((part) => part !== "").join("\n\n");
}

const refName = ({$ref = ""}: Node) => $ref.split("/").at(-1)!;

/** What an entry means: its own words, else those of the shape that stands there. */
function meaningOf(node: Node, shared: Readonly<Record<string, Node>>): string {
  const each = typeof node.additionalProperties === "object" ? node.additionalProperties : undefined;
  const own = node.description ?? (node.$ref ? shared[refName(node)]?.description : undefined);
  return own ?? (each ? meaningOf(each, shared) : "");
}

function kindOf(node: Node): string {
  if (node.$ref) return `a [${refName(node)}](#${refName(node)})`;
  if (node.const !== undefined) return `\`${String(node.const)}\``;
  if (node.enum) return node.enum.map((one) => `\`${String(one)}\``).join(", ");
  const forms = node.anyOf ?? node.oneOf;
  if (forms) return [...new Set(forms.filter(({type}) => type !== "null").map(kindOf))].join(", or ");
  if (node.prefixItems) return `[${node.prefixItems.map(kindOf).join(", ")}]`;
  if (node.type === "array") return `a list of: ${node.items ? kindOf(node.items) : "anything"}`;
  if (node.type === "object") return typeof node.additionalProperties === "object" ? `named entries, each: ${kindOf(node.additionalProperties)}` : node.properties ? Object.keys(node.properties).length > 2 ? "entries, see below" : `{${Object.keys(node.properties).join(", ")}}` : "named entries";
  if (node.pattern?.startsWith("^\\d{4}-")) return "a month";
  if (node.type === "string") return "text";
  if (node.type === "boolean") return "`true`, `false`";
  return rangeOf(node);
}

function rangeOf({type, minimum, maximum}: Node): string {
  const name = type === "integer" ? "a whole number" : "a number";
  const bound = (value: number | undefined) => value !== undefined && Math.abs(value) < 1e9;
  if (bound(minimum) && bound(maximum)) return `${name} from ${minimum} to ${maximum}`;
  return bound(minimum) ? `${name} from ${minimum}` : name;
}
