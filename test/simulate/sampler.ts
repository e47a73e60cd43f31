// Draws whole garments from a book's own model, docs/model.md, each with the truth that the engine is not told.
import type {Book, LabelKind, Mark} from "../../engine/rule/schema.ts";
import type {Garment, RowText, Seen} from "../../engine/rule/garment.ts";
import type {Eye} from "./cells.ts";
import {doubtValue, drawMark, drawValue} from "./marks.ts";
import type {Random} from "./random.ts";
import {drawRows, type DrawnRow, type RowTruth} from "./rows.ts";
import {codesOf, coveredMonths, drawCode, NothingToDraw, otherMonth, refuse, type World} from "./world.ts";

/** What garments are drawn from: possible makers, evenly likely, and the months considered. */
export interface Source {
  readonly makers: readonly Book[];
  readonly axis: World["axis"];
  /** Garment types, evenly likely; always stated. */
  readonly types?: readonly string[];
}

export interface Truth {
  readonly maker: string;
  readonly month: number;
  /** For every mark that was looked at, label kind included: whether it alone came from elsewhere. */
  readonly strayMarks: ReadonlyMap<string, boolean>;
  /** For every piece with a mark that was looked at: whether the whole piece came from elsewhere. */
  readonly strayPieces: ReadonlyMap<string, boolean>;
  readonly rows: readonly RowTruth[];
}

export interface Drawn {
  readonly garment: Garment;
  readonly truth: Truth;
}

const eye: Eye = {doubtful: 0.06, unreadable: 0.02};

/**
 * Draws one garment.
 * A step with nothing to draw starts the garment again, month and maker included: what the model leaves out of its sums stays out.
 */
export function drawGarment(source: Source, name: string, random: Random): Drawn {
  for (;;) {
    try {
      return tryGarment(source, name, random);
    } catch (error) {
      if (!(error instanceof NothingToDraw)) throw error;
    }
  }
}

function tryGarment({makers, axis, types}: Source, name: string, random: Random): Drawn {
  const book = random.pick(makers);
  const {from, until} = coveredMonths(book, axis);
  const month = random.whole(from, until);
  const markets = Object.keys(book.markets);
  const code = (kind: "plant" | "lot" | "fabric") => {
    const list = codesOf(book, kind);
    return list && drawCode(list, month, random);
  };
  const world: World = {
    book,
    axis,
    random,
    market: markets[random.place(markets.map((market) => book.markets[market]!)) ?? -1] ?? null,
    type: types ? random.pick(types) : null,
    own: {plant: code("plant"), lot: code("lot"), fabric: code("fabric")},
  };
  const look = new Look(world, month, makers);
  look.marks();
  if (book.labels) look.label(book.labels);
  if (look.saw.size === 0 && look.rows.length === 0) refuse("nothing was looked at");
  const rows = look.rows.map(({text, at}): RowText => (at ? {text, at} : text));
  return {
    garment: {
      garment: name,
      maker: makers.length === 1 ? book.book : makers.map((maker) => maker.book),
      ...(world.market && random.happens(0.5) ? {market: world.market} : {}),
      ...(world.type ? {type: world.type} : {}),
      saw: {...Object.fromEntries(look.saw), ...(rows.length > 0 ? {rows} : {})} as Garment["saw"],
    },
    truth: {maker: book.book, month, strayMarks: look.strayMarks, strayPieces: look.strayPieces, rows: look.rows.map(({truth}) => truth)},
  };
}

/** One person's look at a garment: some marks, perhaps the label, perhaps its rows. */
class Look {
  readonly saw = new Map<string, Seen>();
  rows: readonly DrawnRow[] = [];
  readonly strayMarks = new Map<string, boolean>();
  readonly strayPieces = new Map<string, boolean>();
  private readonly pieceMonths = new Map<string, number>();
  private readonly curiosity: number;
  private readonly world: World;
  private readonly month: number;
  private readonly makers: readonly Book[];

  constructor(world: World, month: number, makers: readonly Book[]) {
    this.world = world;
    this.month = month;
    this.makers = makers;
    this.curiosity = world.random.pick([0.2, 0.5, 0.9]);
  }

  /** Marks that every possible maker's book knows; the others would tell the maker by their names. */
  marks(): void {
    const {random, book} = this.world;
    for (const [id, mark] of Object.entries(book.marks)) {
      if (!this.makers.every((maker) => maker.marks[id]) || !random.happens(this.curiosity)) continue;
      this.mark(id, mark);
    }
  }

  private mark(id: string, mark: Mark): void {
    const month = this.monthOf(mark.piece);
    const {seen, stray} = drawMark(mark, month, this.world, eye, !this.isStray(mark.piece));
    this.saw.set(id, seen);
    this.strayMarks.set(id, stray);
  }

  label(labels: NonNullable<Book["labels"]>): void {
    const {random} = this.world;
    const kindSeen = random.happens(0.75);
    const rowsSeen = random.happens(0.75);
    if (!kindSeen && !rowsSeen) return;
    const month = this.monthOf(labels.piece ?? "care-label");
    // A kind that nobody looked at is not misjudged.
    const stray = kindSeen && random.happens(labels.stray);
    const kind = random.happens(labels.lost) ? "none" : drawValue(labels.kinds, labels.other, stray ? otherMonth(this.world) : month, this.world);
    if (rowsSeen && kind !== "none") {
      const own = !this.isStray(labels.piece ?? "care-label");
      this.rows = drawRows({kind, month, world: this.world, eye, placed: kindSeen && random.happens(0.5), own});
    }
    if (this.rows.length > 12) refuse("more rows than can be written down");
    const said = kindSeen ? this.sayKind(kind, labels.kinds) : null;
    // That no row could be read tells the kinds apart, but cannot be written down unless the kind is known.
    if (rowsSeen && this.rows.length === 0 && typeof said !== "string") refuse("no row to read");
    if (said === null) return;
    this.saw.set("label", said);
    this.strayMarks.set("label", stray);
  }

  private sayKind(kind: string, kinds: Readonly<Record<string, LabelKind>>): Seen {
    return doubtValue(kind, Object.keys(kinds).filter((id) => id !== "none"), this.world);
  }

  private isStray(piece: string | undefined): boolean {
    return piece !== undefined && (this.strayPieces.get(piece) ?? false);
  }

  /** The month a piece was made in: the garment's, or, for a stray piece, any month of the maker's. */
  private monthOf(piece: string | undefined): number {
    if (piece === undefined) return this.month;
    let month = this.pieceMonths.get(piece);
    if (month === undefined) {
      const stray = this.world.random.happens(this.world.book.pieces[piece]?.stray ?? 0);
      this.strayPieces.set(piece, stray);
      this.pieceMonths.set(piece, (month = stray ? otherMonth(this.world) : this.month));
    }
    return month;
  }
}
