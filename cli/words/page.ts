// Gathers the lines of an answer: heads, items with a sign before them, and plain sentences, all within the width.
import {sayOdds} from "../../engine/index.ts";
import {columnsOf, plainText, wrap} from "./wrap.ts";
import type {Paint} from "./paint.ts";

const margin = "  ";

export class Page {
  readonly lines: string[] = [];
  readonly width: number;
  readonly paint: Paint;

  /** @param width  columns of the terminal; 40 at least, 120 at most, so that lines stay readable */
  constructor(width: number, paint: Paint) {
    this.width = Math.min(120, Math.max(40, width));
    this.paint = paint;
  }

  /** Columns inside the margin. */
  get room(): number {
    return this.width - columnsOf(margin);
  }

  blank(): void {
    if (this.lines.length > 0 && this.lines.at(-1) !== "") this.lines.push("");
  }

  /** A head with an explanation beside it, after an empty line. */
  head(text: string, beside = ""): void {
    this.blank();
    const fits = columnsOf(text) + columnsOf(beside) + 2 <= this.room;
    if (beside !== "" && fits) this.lines.push(`${margin}${this.paint.strong(text)}  ${this.paint.quiet(beside)}`);
    else this.say(text, "strong");
    if (beside !== "" && !fits) this.say(beside, "quiet");
  }

  /** A sentence, broken over as many lines as it needs. */
  say(text: string, how?: keyof Paint): void {
    this.item("", text, how);
  }

  /** A sentence with something before it; the lines below are indented as far. `how` paints the sentence, "moved" only what stands before it. */
  item(before: string, text: string, how?: keyof Paint): void {
    const indent = " ".repeat(columnsOf(before));
    wrap(plainText(text), this.width, margin + indent).forEach((line, i) => {
      const words = line.slice(margin.length + indent.length);
      const sign = i === 0 ? before : indent;
      this.lines.push((margin + (how === "moved" ? this.paint.moved(sign) + words : sign + (how ? this.paint[how](words) : words))).trimEnd());
    });
  }

  /** Sentences with their odds before them, the figures below each other. */
  odds(lines: readonly (readonly [probability: number, text: string])[], how?: keyof Paint): void {
    const room = Math.max(0, ...lines.map(([probability]) => sayOdds(probability).length));
    for (const [probability, text] of lines) this.item(`${sayOdds(probability).padStart(room)}  `, text, how);
  }

  /** Lines as they are: pictures. */
  picture(lines: readonly string[], how?: keyof Paint): void {
    for (const line of lines) this.lines.push(line === "" ? "" : margin + (how ? this.paint[how](line) : line));
  }
}
