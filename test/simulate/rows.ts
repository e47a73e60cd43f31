// Draws the printed rows of a label, section 5 of docs/model.md, and remembers what each cell was.
import type {LayoutRow} from "../../engine/rule/schema.ts";
import type {Stated} from "../../engine/scheme/stated.ts";
import {charactersOf, seeRow, type Between, type Character, type Eye} from "./cells.ts";
import {drawScheme, printDate} from "./print.ts";
import {codesOf, drawCode, figures, refuse, type Code, type World} from "./world.ts";

type CodeName = "plant" | "lot" | "fabric";
type Cells = readonly [from: number, until: number];

/** What the cells of a row truly are; a date that no scheme explains is null, as is a code that the row does not show. */
export interface RowTruth {
  readonly date: {readonly scheme: string; readonly stated: Stated; readonly from: number} | null;
  readonly plant: Cells | null;
  readonly lot: Cells | null;
  readonly fabric: Cells | null;
}

export interface DrawnRow {
  readonly text: string;
  readonly at: LayoutRow["at"] | null;
  readonly truth: RowTruth;
}

const places = ["face", "back", "top edge", "left edge", "right edge", "bottom edge"] as const;

/** What the rows of one label are printed from. */
export interface Label {
  /** Id of the label kind; "other" has no layout. */
  readonly kind: string;
  readonly month: number;
  readonly world: World;
  readonly eye: Eye;
  /** Whether the owner notes where each row stands. */
  readonly placed: boolean;
  /** Whether the label came with the garment: then the first row that shows a code shows the garment's own. */
  readonly own: boolean;
}

/**
 * Draws all rows that can be read on a label, top to bottom.
 * An extra row without a single character cannot be seen: the garment is drawn again.
 */
export function drawRows(label: Label): DrawnRow[] {
  const {world} = label;
  const {random, book} = world;
  const layout = book.labels!.kinds[label.kind]?.rows ?? [];
  const lines: (LayoutRow | null)[] = layout.filter(({share}) => random.happens(share));
  let extra = 0;
  while (random.happens(book.labels!.extra)) extra++;
  const shown = new Set<CodeName>();
  return placeExtras(lines, extra, world).map((line) => {
    const row = new RowPrinter(label, shown);
    if (line) row.byLayout(line);
    else row.freely();
    return row.seen(line);
  });
}

function placeExtras(lines: readonly (LayoutRow | null)[], extra: number, {random}: World): (LayoutRow | null)[] {
  const extras = new Array<null>(extra).fill(null);
  if (!random.happens(0.9)) return random.shuffled([...lines, ...extras]);
  const result = [...lines];
  const spots = random.shuffled(Array.from({length: lines.length + extra}, (_, i) => i)).slice(0, extra).sort((a, b) => a - b);
  for (const spot of spots) result.splice(spot, 0, null);
  return result;
}

/** Prints one row, field by field. */
class RowPrinter {
  private readonly printed: Character[] = [];
  private date: RowTruth["date"] = null;
  private readonly codes: Record<CodeName, Cells | null> = {plant: null, lot: null, fabric: null};
  private readonly label: Label;
  private readonly shown: Set<CodeName>;

  constructor(label: Label, shown: Set<CodeName>) {
    this.label = label;
    this.shown = shown;
  }

  byLayout(line: LayoutRow): void {
    let before: Between = "joined";
    for (const field of line.fields) {
      if (field === " " || field === "-" || field === "." || field === "/") {
        before = field;
        continue;
      }
      this.field(field, before);
      before = "joined";
    }
  }

  private field(field: Exclude<LayoutRow["fields"][number], " " | "-" | "." | "/">, before: Between): void {
    const {random, book} = this.label.world;
    if (typeof field === "object") this.put(field.text.toUpperCase(), before);
    else if (field === "date") this.putDate(before);
    else if (field === "size" || field === "inspector" || field === "other") {
      const [least, most] = book.fields[field]?.figures ?? ({size: [2, 2], inspector: [1, 2], other: [1, 4]} as const)[field];
      this.put(figures(random.whole(least, most), random), before);
    } else this.putCode(field, before, true);
  }

  /** A row of unknown layout. */
  freely(): void {
    const {random, book} = this.label.world;
    const fields: ("date" | "plant")[] = [];
    if (random.happens(0.4)) fields.push("date");
    if (book.plants && random.happens(0.4)) fields.push("plant");
    this.noise();
    for (const field of random.shuffled(fields)) {
      if (field === "date") this.putDate("noise");
      else this.putCode("plant", "noise", false);
      this.noise();
    }
    if (this.printed.length === 0) refuse("an extra row without a character");
  }

  private noise(): void {
    const {random} = this.label.world;
    while (random.happens(0.5)) {
      this.put(random.happens(0.8) ? figures(1, random) : "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[random.whole(0, 25)]!, "noise");
    }
  }

  private putDate(before: Between): void {
    const {kind, month, world} = this.label;
    const ids = world.book.labels!.kinds[kind]?.schemes ?? Object.keys(world.book.schemes);
    const scheme = drawScheme(ids, month, world, kind);
    const from = this.printed.length;
    if (scheme === null) this.put(figures(world.random.whole(2, 4), world.random), before);
    else {
      const {text, stated} = printDate(scheme, month, world);
      this.put(text, before);
      this.date = {scheme, stated, from};
    }
  }

  private putCode(name: CodeName, before: Between, layout: boolean): void {
    const {month, world, own} = this.label;
    const list = codesOf(world.book, name);
    const first = own && !this.shown.has(name);
    this.shown.add(name);
    const code: Code = (first && world.own[name]) || drawCode(list, month, world.random);
    const prefix = layout && list?.prefix && world.random.happens(list.prefix.share) ? figures(list.prefix.figures, world.random) : "";
    const from = this.printed.length + prefix.length;
    this.put(prefix + code.text, before);
    if (list) this.codes[name] = [from, from + code.text.length];
  }

  private put(text: string, before: Between): void {
    this.printed.push(...charactersOf(text, this.printed.length === 0 ? null : before));
  }

  seen(line: LayoutRow | null): DrawnRow {
    const {world, eye, placed} = this.label;
    return {
      text: seeRow(this.printed, eye, world.random),
      at: placed ? (line?.at ? this.placeNear(line.at) : world.random.pick(places)) : null,
      truth: {date: this.date, ...this.codes},
    };
  }

  /** The place of a row as noted: each wrong one a twentieth as likely as the right one. */
  private placeNear(at: NonNullable<LayoutRow["at"]>): (typeof places)[number] {
    const {random} = this.label.world;
    return places[random.place(places.map((place) => (place === at ? 1 : 0.05)))!]!;
  }
}

