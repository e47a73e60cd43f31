// A book made of subject files: the head says which book it is, each other file adds one subject, and its path is part of every rule's name.
import {z} from "zod";
import type {Problem} from "../engine/problem.ts";
import {bookSchema, type Book} from "../engine/rule/schema.ts";
import type {Path, Where} from "./place.ts";
import * as say from "./problems.ts";

const {sources, places, pieces, marks, schemes, groups, note} = bookSchema.shape;

export const subjectSchema = z
  .strictObject({
    subject: bookSchema.shape.title.describe("what the file is about, in a few words"),
    note,
    sources: sources.default({}),
    places,
    pieces,
    marks,
    schemes,
    groups,
  })
  .describe("one subject of a rule book that is a folder");

export type Subject = z.infer<typeof subjectSchema>;

/** A subject file as read. `prefix` is its path with dots, "us.care.label"; marks, schemes and groups get it before their names. */
export interface SubjectFile {
  readonly prefix: string;
  readonly subject: Subject;
  readonly where: Where;
}

const sections = {sources: "source", places: "place", pieces: "piece", marks: "mark", schemes: "scheme", groups: "group"} as const;
type Section = keyof typeof sections;
const prefixed: ReadonlySet<Section> = new Set(["marks", "schemes", "groups"]);

/**
 * Joins a head and its subjects to one book.
 * @returns where entries stand in the files they came from, and a problem for each name that two files give away
 */
export function joinSubjects(head: {book: Book; where: Where}, files: readonly SubjectFile[]): {book: Book; where: Where; problems: Problem[]} {
  const problems: Problem[] = [];
  const origins = new Map<string, {path: Path; where: Where}>();
  const book: Book = {...head.book};
  const add = <S extends Section>(section: S, entries: Book[S], {where, prefix}: {where: Where; prefix: string | null}) => {
    const joined: Record<string, unknown> = {...book[section]};
    for (const [local, entry] of Object.entries(entries)) {
      const id = prefix !== null && prefixed.has(section) ? `${prefix}.${local}` : local;
      const path = [section, local];
      const first = origins.get(`${section} ${id}`);
      if (first) problems.push(say.writtenInTwoFiles(where(path, "key"), sections[section], id, first.where(first.path, "key")));
      else {
        origins.set(`${section} ${id}`, {path, where});
        joined[id] = entry;
      }
    }
    book[section] = joined as Book[S];
  };

  for (const section of Object.keys(sections) as Section[]) add(section, head.book[section], {where: head.where, prefix: null});
  for (const {prefix, subject, where} of files) {
    const named = withFullNames(subject, prefix);
    for (const section of Object.keys(sections) as Section[]) add(section, named[section], {where, prefix});
  }
  const where: Where = (path, part) => {
    const origin = origins.get(`${path[0]} ${path[1]}`);
    return origin ? origin.where([...origin.path, ...path.slice(2)], part) : head.where(path, part);
  };
  return {book, where, problems};
}

// Inside a file its own marks and schemes are called by their short names.
function withFullNames(subject: Subject, prefix: string): Subject {
  const full = (names: readonly string[], own: object) => names.map((name) => (Object.hasOwn(own, name) ? `${prefix}.${name}` : name));
  const named = Object.entries(subject.marks).map(([id, mark]) => [id, mark.kind === "coded" ? {...mark, schemes: full(mark.schemes, subject.schemes)} : mark] as const);
  const grouped = Object.entries(subject.groups).map(([id, group]) => [id, {...group, marks: full(group.marks, subject.marks)}] as const);
  return {...subject, marks: Object.fromEntries(named), groups: Object.fromEntries(grouped)};
}
