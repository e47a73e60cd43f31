// The garments that are timed: drawn from the books' own model, all different, each with six marks, three rows and two doubtful characters.
import type {Book} from "../engine/index.ts";
import type {Garment, RowText} from "../engine/rule/garment.ts";
import {saltmarsh, shippedAxis} from "../test/simulate/books.ts";
import {seeded, type Random} from "../test/simulate/random.ts";
import {drawGarment} from "../test/simulate/sampler.ts";

/** Beside the public book and the shipped makers' a small third one. */
export const thirdBook: Book = saltmarsh;

const [marksWanted, rowsWanted, doubtsWanted] = [6, 3, 2];

/**
 * Draws garments.
 * @param books  the public book and makers' books; each garment is of one maker, evenly
 */
export function drawGarments(books: readonly Book[], count: number, seed: number): Garment[] {
  const random = seeded(seed);
  const makers = books.filter(({kind}) => kind === "maker");
  const open = books.filter(({kind}) => kind === "public");
  const garments: Garment[] = [];
  while (garments.length < count) {
    const garment = tryGarment(random.pick(makers), random.pick(open), `drawn-${garments.length}`, random);
    if (garment) garments.push(garment);
  }
  return garments;
}

/** Null when the draw has too little to look at. */
function tryGarment(maker: Book, open: Book, name: string, random: Random): Garment | null {
  const {garment, truth} = drawGarment({makers: [maker], axis: shippedAxis}, name, random);
  const {rows, ...own} = garment.saw;
  const texts = (rows ?? []).slice(0, rowsWanted);
  if (texts.length < rowsWanted) return null;
  const doubted = withDoubts(texts, random);
  if (!doubted) return null;
  // Public marks of the same month, of a few picked ones: drawing all of them would take longer than anything timed here.
  const few = {...open, marks: Object.fromEntries(random.shuffled(Object.entries(open.marks)).slice(0, 15))};
  const outside = drawGarment({makers: [few], axis: {from: truth.month, until: truth.month}}, name, random).garment.saw;
  const marks = [...random.shuffled(Object.entries(own)).slice(0, marksWanted / 2), ...random.shuffled(Object.entries(outside))].slice(0, marksWanted);
  if (marks.length < marksWanted) return null;
  return {...garment, saw: {...Object.fromEntries(marks), rows: doubted} as Garment["saw"]};
}

const doubt = /\?|\([^)]*\)/g;
const textOf = (row: RowText) => (typeof row === "object" && "text" in row ? String(row.text) : String(row));

/** Makes figures doubtful until there are as many doubtful ones as wanted; null when there are more already, or no figures. */
function withDoubts(rows: readonly RowText[], random: Random): RowText[] | null {
  const texts = rows.map(textOf);
  for (let left = doubtsWanted - texts.join().split(doubt).length + 1; left > 0; left--) {
    const place = random.whole(0, texts.length - 1);
    const figure = random.pick([...texts[place]!.replace(doubt, (found) => " ".repeat(found.length)).matchAll(/\d/g), null]);
    if (!figure) return null;
    const other = (Number(figure[0]) + random.whole(1, 9)) % 10;
    texts[place] = `${texts[place]!.slice(0, figure.index)}(${figure[0]}:60/${other}:40)${texts[place]!.slice(figure.index + 1)}`;
  }
  if (texts.join().split(doubt).length - 1 !== doubtsWanted) return null;
  return rows.map((row, i) => (typeof row === "object" && "text" in row ? {...row, text: texts[i]!} : texts[i]!));
}

/** The same garment under another name with other figures printed: as much work, another answer. */
export function changedGarment(garment: Garment, number: number, random: Random): Garment {
  const rows = garment.saw.rows?.map((row) => {
    const text = textOf(row).replace(/(?<![:(/])\d(?![:/)])/g, (figure) => (random.happens(0.5) ? String(random.whole(0, 9)) : figure));
    return typeof row === "object" && "text" in row ? {...row, text} : text;
  });
  return {...garment, garment: `changed-${number}`, saw: {...garment.saw, rows} as Garment["saw"]};
}
