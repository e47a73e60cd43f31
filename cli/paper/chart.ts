// ticking paper chart.
import {bookOf} from "../../commands/world.ts";
import * as say from "../../commands/problems.ts";
import {nearest} from "../../engine/index.ts";
import type {ChartSize} from "../../commands/paper/choices.ts";
import {printChart} from "../../paper/print.ts";
import {worldWith} from "../books/open.ts";
import {instantNow} from "../clock.ts";
import {NeedsMending} from "../ending.ts";
import type {WorldFlags} from "../shared.ts";
import {writePaper} from "./write.ts";

interface Flags extends WorldFlags {
  readonly size: ChartSize;
  readonly out?: string;
}

export async function makeChart(name: string, {size, out = "wall-chart.pdf", ...flags}: Flags): Promise<void> {
  const {world, id} = worldWith(name, flags);
  const book = bookOf(world, id);
  const ids = world.books.map((one) => one.book);
  if (!book) throw new NeedsMending([say.unknownBook("book", id, ids, nearest(id, ids))]);
  writePaper(out, await printChart(book, world.today, size, {on: instantNow().slice(0, 10), author: ""}));
  process.stderr.write(`Wrote ${out}.\n`);
}
