// Which kind of label it is: odds from the row grammar, the order of its fields and the words beside them; a suggestion, never set by itself.
import {z} from "zod";
import {labelId, type Book, type Garment, type RowText} from "../../engine/index.ts";
import type {World} from "../world.ts";
import {codeRows} from "./code-rows.ts";
import {textOfRow} from "./row-text.ts";
import {suggestMarks} from "./suggest-marks.ts";

export const kindOddsSchema = z.strictObject({
  maker: z.string().describe("id of the maker's book"),
  kind: z.string().nullable().describe("id of the label kind; null: one that the book does not list"),
  name: z.string(),
  odds: z.number().min(0).max(1).describe("over all kinds of the makers asked, adding up to 1"),
});

/** One label kind with its odds. */
export type KindOdds = z.infer<typeof kindOddsSchema>;

export interface KindOptions {
  /** Ids of possible makers' books; all makers at hand when left out. */
  readonly makers?: readonly string[];
  /** What else is known of the garment: its marks move the odds, too. */
  readonly garment?: Garment;
}

/** A word is counted as seen when it is at least so like. Source: own choice. */
const clear = 0.9;

/**
 * Odds of every label kind of the possible makers, likeliest first; none when no row can carry a code.
 * The odds are the engine's own: the chance of rows and words under each kind, summed over all months, its order of rows and fields included.
 * @param rows  all rows of the label, words among them, as typed or as a reader saw them
 * @cost        one examination a kind, a few milliseconds each
 * @example
 * suggestKinds(["412-0318", "3 8 21"], world, {makers: ["marrowfield"]})[0]?.kind // -> "plain-white"
 */
export function suggestKinds(rows: readonly RowText[], world: World, {makers, garment}: KindOptions = {}): KindOdds[] {
  const books = world.books.filter(({book, kind, labels}) => kind === "maker" && labels && (makers?.includes(book) ?? true));
  const texts = rows.map(textOfRow);
  const codes = codeRows(texts);
  if (codes.length === 0 || books.length === 0) return [];
  const words = Object.fromEntries(suggestMarks(texts, world, {makers: []}).filter(({likeness}) => likeness >= clear).map(({mark, value}) => [mark, value]));
  const saw: object = {...words, ...garment?.saw, rows: codes.map((i) => fewer(rows[i]!))};
  const weighed = books.flatMap((book) => [...Object.keys(book.labels!.kinds), null].map((kind) => ({book, kind, mass: massOf({...garment, garment: "label", maker: book.book, saw: {...saw, [labelId]: kind ?? "other"} as Garment["saw"]}, world)})));
  const total = weighed.reduce((sum, {mass}) => sum + mass, 0);
  if (!(total > 0)) return [];
  return weighed.map(({book, kind, mass}) => ({maker: book.book, kind, name: nameOf(book, kind), odds: mass / total})).sort((a, b) => b.odds - a.odds);
}

/** The few likeliest readings of a row tell its kind as well as all of them, in a fraction of the time. */
function fewer(row: RowText): RowText {
  if (typeof row === "string" || !("readings" in row)) return row;
  const readings = [...row.readings].sort((a, b) => b.weight - a.weight).slice(0, 6);
  return {...row, readings};
}

const nameOf = (book: Book, kind: string | null) => (kind === null ? "a kind that the book does not list" : book.labels!.kinds[kind]!.name);

/** Chance of everything seen, summed over months; 0 when it cannot be examined so. */
function massOf(garment: Garment, world: World): number {
  const {finding} = world.examiner().stages(garment);
  return finding ? finding.evaluations.reduce((sum, {joint}) => sum + joint.reduce((total, p) => total + p, 0), 0) : 0;
}
