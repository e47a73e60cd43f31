// The next question worth asking about a garment, and what is known so far.
import {z} from "zod";
import {labelId, rowsId, sayMonth, type Book, type Finding, type Mark, type NextLook} from "../engine/index.ts";
import {garmentSchema, type Garment} from "../engine/rule/garment.ts";
import {command} from "./command.ts";
import {verdictOf} from "./verdict.ts";
import {bookOf, type World} from "./world.ts";

/** One thing that a mark can be. */
export interface Possible {
  readonly id: string;
  readonly name: string;
  readonly says: string | null;
}

export interface Question extends NextLook {
  /** How it is answered. */
  readonly kind: Mark["kind"] | "rows";
  /** What a choice can be; empty for other kinds. */
  readonly values: readonly Possible[];
}

export interface AskAnswer {
  readonly finding: Finding;
  /** The date so far in one sentence. */
  readonly soFar: string;
  /** Null when nothing is left that would settle anything worth the look. */
  readonly question: Question | null;
}

/** Looks that settle less are not worth a question. Source: own choice. */
const leastBits = 0.02;

export const askNext = command({
  name: "garment.ask",
  summary: "ask for the marks of a garment, the most telling look first",
  input: z.strictObject({
    garment: garmentSchema,
    skip: z.array(z.string()).default([]).describe("marks that cannot be seen or were passed over"),
  }),
  run({garment, skip}, world) {
    const {finding, problems} = world.examiner().examine(garment);
    if (problems) return {problems};
    const look = finding.next.find(({id, bits}) => bits >= leastBits && !skip.includes(id));
    return {answer: {finding, soFar: soFar(finding), question: look ? questionOf(look, garment, world) : null}};
  },
  json: ({soFar: words, question, finding}: AskAnswer) => ({soFar: words, sureness: verdictOf(finding).sureness, question}),
});

function soFar(finding: Finding): string {
  const {kind, sentence} = verdictOf(finding);
  const {noEarlier: first, noLater: last} = finding;
  if (kind !== "one date") return `${sentence}.`;
  return `${sentence}; ${first === last ? "hardly any other month is left" : `no earlier than ${sayMonth(first)}, no later than ${sayMonth(last)}`}.`;
}

function questionOf(look: NextLook, garment: Garment, world: World): Question {
  if (look.id === rowsId) return {...look, kind: "rows", values: []};
  const makers = [garment.maker ?? []].flat();
  const books = [...makers.flatMap((maker) => bookOf(world, maker) ?? []), ...world.books.filter(({kind}) => kind === "public")];
  const marks = books.flatMap((book) => markIn(book, look.id) ?? []);
  const values = new Map(marks.flatMap((mark) => (mark.kind === "choice" ? Object.entries(mark.values) : [])));
  return {
    ...look,
    kind: marks[0]?.kind ?? "coded",
    values: [...values].map(([id, {name, says}]) => ({id, name, says: says ?? null})),
  };
}

/** A mark of a book; the kinds of label count as one. */
function markIn(book: Book, id: string): Mark | undefined {
  if (id === labelId && book.labels) return {...book.labels, kind: "choice", values: book.labels.kinds};
  return Object.hasOwn(book.marks, id) ? book.marks[id] : undefined;
}
