// From disk to checked books and garments: the only code here that touches files.
import {existsSync, readdirSync, readFileSync, statSync} from "node:fs";
import {join, relative, sep} from "node:path";
import {fileURLToPath} from "node:url";
import type {z} from "zod";
import type {Problem} from "../engine/problem.ts";
import type {Garment} from "../engine/rule/garment.ts";
import {bookSchema, type Book} from "../engine/rule/schema.ts";
import * as sayFile from "./file-problems.ts";
import {firstProblems, mostBytes} from "./parse-yaml.ts";
import * as say from "./problems.ts";
import {joinSubjects, subjectSchema, type SubjectFile} from "./subject.ts";
import {checkBook, printedInBook, readShape, validateBook, validateGarment, type CheckedBook, type CheckedGarment, type Shaped} from "./validate.ts";

/**
 * Loads a rule book from a file, or from a folder whose book.yaml is the head and whose other .yaml files, at any depth, hold one subject each.
 * @param path  as the owner wrote it; heads of problems show it from the working folder
 * @returns     the whole book, or every problem of every file and no book
 */
export function loadBook(path: string): CheckedBook {
  const kind = kindOf(path);
  if (typeof kind === "object") return {problems: [kind]};
  if (kind === "folder") return loadFolder(path);
  const bytes = readBytes(path);
  return bytes instanceof Uint8Array ? validateBook(bytes, shown(path)) : {problems: [bytes]};
}

/** Loads a garment from a YAML or JSON file. */
export function loadGarment(path: string): CheckedGarment {
  const bytes = readBytes(path);
  return bytes instanceof Uint8Array ? validateGarment(bytes, shown(path)) : {problems: [bytes]};
}

/**
 * The books that come with the tool: the public one first, then the makers' by file name.
 * @returns all of them, or every problem and none
 */
export function shippedBooks(): {books: readonly Book[]; problems?: undefined} | {books?: undefined; problems: readonly Problem[]} {
  const makers = join(home(), "makers");
  return loadBooks([join(home(), "public"), ...readdirSync(makers).filter(isYaml).sort().map((name) => join(makers, name))]);
}

/** Loads several books that are to be used together: all of them, or none. */
export function loadBooks(paths: readonly string[]): ReturnType<typeof shippedBooks> {
  const loaded = paths.map((path) => ({path, ...loadBook(path)}));
  const problems = loaded.flatMap((one) => one.problems ?? []);
  const books = loaded.flatMap(({path, book}) => (book ? [{path, book}] : []));
  for (const [i, {path, book}] of books.entries()) {
    const first = books.slice(0, i).find((other) => other.book.book === book.book);
    if (first) problems.push(say.twoBooks(shown(path), book.book, shown(first.path)));
  }
  return problems.length > 0 ? {problems} : {books: books.map(({book}) => book)};
}

/** The made-up garments that come with the tool, by file name. */
export function demoGarments(): readonly Garment[] {
  const folder = join(home(), "demo", "garments");
  return readdirSync(folder).filter(isYaml).sort().flatMap((name) => loadGarment(join(folder, name)).garment ?? []);
}

/** The made-up shop of the demo, as its file stands: what some of the garments cost and brought, and sales of others. */
export function demoShop(): {readonly garments: Readonly<Record<string, unknown>>; readonly sales: readonly unknown[]} {
  return JSON.parse(readFileSync(join(home(), "demo", "shop.json"), "utf8")) as ReturnType<typeof demoShop>;
}

// Compiled code stands one folder deeper than the books.
function home(): string {
  const here = fileURLToPath(new URL(".", import.meta.url));
  return existsSync(join(here, "public")) ? here : join(here, "..", "..", "rulebooks");
}

function loadFolder(folder: string): CheckedBook {
  const names = listYaml(folder);
  if (!Array.isArray(names)) return {problems: [names]};
  const problems: Problem[] = [];
  const head = names.includes("book.yaml") ? readFile(bookSchema, join(folder, "book.yaml")) : {problems: [say.noHead(shown(folder))]};
  problems.push(...(head.problems ?? []));
  const subjects: SubjectFile[] = [];
  for (const name of names.filter((other) => other !== "book.yaml")) {
    const path = join(folder, name);
    const prefix = prefixOf(name);
    if (prefix === null) {
      problems.push(say.badFileName(shown(path)));
      continue;
    }
    const subject = readFile(subjectSchema, path);
    problems.push(...(subject.problems ?? []));
    if (subject.fits) subjects.push({prefix, subject: subject.fits, where: subject.where});
  }
  if (problems.length > 0 || !head.fits) return {problems: firstProblems(problems, shown(folder))};

  const joined = joinSubjects({book: head.fits, where: head.where}, subjects);
  const contradictions = [...joined.problems, ...checkBook(joined.book, joined.where)];
  return contradictions.length > 0 ? {problems: firstProblems(contradictions, shown(folder))} : {book: joined.book, where: joined.where};
}

function readFile<T extends z.ZodType>(schema: T, path: string): Shaped<z.infer<T>> {
  const bytes = readBytes(path);
  return bytes instanceof Uint8Array ? readShape(schema, bytes, shown(path), printedInBook) : {problems: [bytes]};
}

/** us/care/label.yaml is us.care.label; null when the path cannot be part of a name. */
function prefixOf(name: string): string | null {
  const prefix = name.split(sep).join(".").replace(/\.yaml$/, "");
  return name.endsWith(".yaml") && bookSchema.shape.book.safeParse(prefix).success ? prefix : null;
}

const isYaml = (name: string) => /\.ya?ml$/i.test(name) && !name.startsWith(".");

function listYaml(folder: string): string[] | Problem {
  try {
    return yamlFiles(folder).sort();
  } catch (error) {
    return cannotOpen(folder, error);
  }
}

// Paths below the folder; links to folders are not followed, so that no circle of links can trap the walk.
function yamlFiles(folder: string, below = ""): string[] {
  return readdirSync(join(folder, below), {withFileTypes: true}).flatMap((entry) => {
    const name = join(below, entry.name);
    if (entry.isDirectory()) return entry.name.startsWith(".") ? [] : yamlFiles(folder, name);
    return isYaml(entry.name) ? [name] : [];
  });
}

function kindOf(path: string): "file" | "folder" | Problem {
  try {
    const stat = statSync(path);
    if (stat.isDirectory()) return "folder";
    if (!stat.isFile()) return sayFile.notReadable(shown(path), "it is neither a file nor a folder");
    return stat.size > mostBytes ? sayFile.tooLarge(shown(path), stat.size, mostBytes) : "file";
  } catch (error) {
    return cannotOpen(path, error);
  }
}

function readBytes(path: string): Uint8Array | Problem {
  const kind = kindOf(path);
  if (typeof kind === "object") return kind;
  try {
    return readFileSync(path);
  } catch (error) {
    return cannotOpen(path, error);
  }
}

function cannotOpen(path: string, error: unknown): Problem {
  const {code, message} = error as NodeJS.ErrnoException;
  if (code === "ENOENT" || code === "ENOTDIR") return sayFile.notFound(shown(path));
  return sayFile.notReadable(shown(path), code === "EISDIR" ? "it is a folder" : (code ?? message));
}

/** A path from the working folder when it lies inside, else as given. */
function shown(path: string): string {
  const inside = relative(process.cwd(), path);
  return inside === "" || inside.startsWith("..") ? path : inside;
}
