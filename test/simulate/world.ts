// What a drawn garment is drawn from: months, windows and circumstances, written again from docs/model.md and not taken from the engine.
import type {Book, CodeList, When, WindowText} from "../../engine/rule/schema.ts";
import type {Random} from "./random.ts";

/** Thrown when a step has nothing to draw: the garment is drawn again from the start, so that what remains keeps the model's proportions. */
export class NothingToDraw extends Error {}

export const refuse = (why: string): never => {
  throw new NothingToDraw(why);
};

/** Months since January 1900. */
export function monthNumber(text: string): number {
  return (Number(text.slice(0, 4)) - 1900) * 12 + Number(text.slice(5)) - 1;
}

const clamp = (x: number) => Math.min(1, Math.max(0, x));

export function up({begins}: WindowText, t: number): number {
  if (!begins) return 1;
  const [b0, b1] = begins.map(monthNumber) as [number, number];
  return b0 === b1 ? Number(t >= b0) : clamp((t + 0.5 - b0) / (b1 - b0));
}

export function down({ends}: WindowText, t: number): number {
  if (!ends) return 1;
  const [e0, e1] = ends.map(monthNumber) as [number, number];
  return e0 === e1 ? Number(t <= e1) : clamp((e1 + 0.5 - t) / (e1 - e0));
}

/** Height of a window at a month, section 1 of docs/model.md. */
export function heightAt(window: WindowText, t: number, outside = 0): number {
  return outside + (1 - outside) * up(window, t) * down(window, t);
}

/** A hidden code: a listed one, or figures that the list does not know. */
export interface Code {
  readonly text: string;
  readonly listed: boolean;
}

/** Everything that stays the same on one garment while its marks are drawn. */
export interface World {
  readonly book: Book;
  readonly axis: {readonly from: number; readonly until: number};
  readonly random: Random;
  readonly market: string | null;
  readonly type: string | null;
  readonly own: Readonly<Record<"plant" | "lot" | "fabric", Code | null>>;
}

/** The months in which the maker of a book can have made anything. */
export function coveredMonths({covers}: Book, axis: World["axis"]): World["axis"] {
  return {from: Math.max(axis.from, monthNumber(covers.from)), until: Math.min(axis.until, covers.until ? monthNumber(covers.until) : axis.until)};
}

/** A month of some other garment of the maker, evenly: where a stray mark comes from. */
export function otherMonth({axis, book, random}: World): number {
  const {from, until} = coveredMonths(book, axis);
  return random.whole(from, until);
}

/** Whether a `when` fits; a code that the list does not know never fits. */
export function fits(when: When | undefined, {market, type, own}: World, label?: string): boolean {
  const listed = (code: Code | null) => (code?.listed ? code.text : null);
  const values = {market, type, plant: listed(own.plant), lot: listed(own.lot), label: label ?? null};
  return Object.entries(when ?? {}).every(([name, wanted]) => {
    const value = values[name as keyof typeof values];
    return value !== null && [wanted].flat().includes(value);
  });
}

/** The list of a kind of code; null when the book has none. */
export function codesOf(book: Book, name: "plant" | "lot" | "fabric"): CodeList | null {
  return (name === "plant" ? book.plants : name === "lot" ? book.lots : book.fabrics) ?? null;
}

/** Draws a code as a garment of month t carries it, section 5 of docs/model.md. */
export function drawCode(list: CodeList | null, t: number, random: Random): Code {
  const codes = Object.keys(list?.codes ?? {});
  const weights = [...codes.map((code) => list!.codes[code]!.weight * heightAt(list!.codes[code]!.window, t)), list ? list.unlisted : 1];
  const place = random.place(weights) ?? refuse("no code in use");
  if (place < codes.length) return {text: codes[place]!, listed: true};
  return {text: figures(drawWidth(list, t, random), random), listed: false};
}

function drawWidth(list: CodeList | null, t: number, random: Random): number {
  const law = new Array<number>(9).fill(0);
  for (const {window, shares} of list?.widths ?? []) {
    for (const [width, share] of Object.entries(shares)) law[Number(width)]! += heightAt(window, t) * share;
  }
  return random.place(law) ?? random.whole(1, 4);
}

export function figures(width: number, random: Random): string {
  return Array.from({length: width}, () => random.whole(0, 9)).join("");
}
