// Draws what is seen of one mark, section 2 of docs/model.md: strays, losses and the looker's doubt included.
import type {ChoiceMark, CodedMark, Mark, PresenceMark, RepeatMark, SerialMark, Value} from "../../engine/rule/schema.ts";
import type {Seen} from "../../engine/rule/garment.ts";
import {charactersOf, seeRow, type Eye} from "./cells.ts";
import {printDate, schemeWeights} from "./print.ts";
import {codesOf, coveredMonths, down, drawCode, fits, heightAt, monthNumber, otherMonth, refuse, up, type Code, type World} from "./world.ts";

export interface DrawnMark {
  readonly seen: Seen;
  readonly stray: boolean;
}

/** How sure the looker is of values: with this chance two are named, weighed honestly. */
export const unsure = 0.06;

/**
 * Draws a mark of a garment, or of a piece, made in month t.
 * @param belongs  whether a repeat would show the garment's own code: false on a piece that came from elsewhere
 */
export function drawMark(mark: Mark, t: number, world: World, eye: Eye, belongs: boolean): DrawnMark {
  const stray = world.random.happens(mark.stray);
  const month = stray ? otherMonth(world) : t;
  return {seen: seenOf(mark, month, world, eye, belongs && !stray), stray};
}

function seenOf(mark: Mark, t: number, world: World, eye: Eye, belongs: boolean): Seen {
  switch (mark.kind) {
    case "choice":
      return drawChoice(mark, t, world);
    case "presence":
      return world.random.happens(presentAt(mark, t, world)) ? "present" : "absent";
    case "serial":
      return drawSerial(mark, t, world);
    case "coded":
      return drawCoded(mark, t, world, eye);
    case "repeat":
      return drawRepeat(mark, t, world, eye, belongs);
  }
}

function presentAt(mark: PresenceMark, t: number, world: World): number {
  if (!fits(mark.when, world)) return mark.elsewhere;
  const window = mark.variants.findLast(({when}) => fits(when, world))?.window ?? mark.window;
  return (1 - mark.lost) * (mark.outside + (mark.inside - mark.outside) * up(window, t) * down(window, t));
}

/** A value by the shares of the month; "other" for what the book does not list. */
export function drawValue(values: Readonly<Record<string, Value>>, other: number, t: number, world: World): string {
  const ids = Object.keys(values);
  const weights = ids.map((id) => {
    const value = values[id]!;
    const variant = value.variants.findLast(({when}) => fits(when, world));
    return (variant?.weight ?? value.weight) * heightAt(variant?.window ?? value.window, t, value.outside);
  });
  return ids[world.random.place([...weights, other]) ?? refuse("no value in use")] ?? "other";
}

function drawChoice(mark: ChoiceMark, t: number, world: World): Seen {
  const listed = Object.keys(mark.values).filter((id) => id !== "none");
  if (!fits(mark.when, world)) return world.random.happens(mark.elsewhere) ? world.random.pick(listed) : "none";
  if (world.random.happens(mark.lost)) return "none";
  return doubtValue(drawValue(mark.values, mark.other, t, world), listed, world);
}

/** The value itself, or, now and then, two values of which the true one is the heavier as often as the weights say. */
export function doubtValue(value: string, listed: readonly string[], {random}: World): Seen {
  if (!listed.includes(value) || listed.length < 2 || !random.happens(unsure)) return value;
  const other = random.pick(listed.filter((id) => id !== value));
  const heavier = random.pick([0.5, 0.8]);
  const [first, second] = random.happens(heavier) ? [value, other] : [other, value];
  return {either: {[first]: heavier, [second]: 1 - heavier}};
}

/** A number issued before the month, by the numbers in use; a garment on which none can stand is drawn again. */
function drawSerial(mark: SerialMark, t: number, {random}: World): Seen {
  const months = mark.knots.slice(1).flatMap(({month, number}, i) => {
    const before = mark.knots[i]!;
    const length = monthNumber(month) - monthNumber(before.month);
    return Array.from({length}, (_, j) => ({from: before.number + (j * (number - before.number)) / length, issued: (number - before.number) / length, at: monthNumber(before.month) + j}));
  });
  // Within a month of issue the height runs in straight lines, so no height lies above its ends and kinks.
  const most = months.map(({at}) => Math.max(...[0, 0.25, 0.5, 0.75, 1].map((part) => useHeight(mark, t + 0.5 - at - part))));
  for (let tries = 0; tries < 10_000; tries++) {
    const place = random.place(months.map(({issued}, i) => issued * most[i]!)) ?? refuse("no number in use");
    const part = random.next();
    const {from, issued, at} = months[place]!;
    if (random.happens(useHeight(mark, t + 0.5 - at - part) / most[place]!)) return String(Math.floor(from + part * issued));
  }
  return refuse("no number in use");
}

function useHeight({fuzz, use}: SerialMark, x: number): number {
  const clamp = (y: number) => Math.min(1, Math.max(0, y));
  const top = Math.max(use.rise, fuzz);
  const rising = top + fuzz === 0 ? Number(x >= 0) : clamp((x + fuzz) / (top + fuzz));
  if (use.usual === null || use.usual === undefined) return rising;
  const last = use.longest ?? use.usual;
  return rising * (last === use.usual ? Number(x <= last) : clamp((last - x) / (last - use.usual)));
}

/** A text by the schemes' shares, measured against the month with most codes; what is left of a month carries none. */
function drawCoded(mark: CodedMark, t: number, world: World, eye: Eye): Seen {
  const {random, book, axis} = world;
  if (!fits(mark.when, world)) return random.happens(mark.elsewhere) ? randomText(4, world) : "none";
  if (random.happens(mark.lost)) return "none";
  const weights = schemeWeights(mark.schemes, t, world);
  const carried = (month: number) => schemeWeights(mark.schemes, month, world).reduce((sum, weight) => sum + weight, mark.other);
  const {from, until} = coveredMonths(book, axis);
  const most = Math.max(...Array.from({length: until - from + 1}, (_, i) => carried(from + i)));
  const place = random.place([...weights, mark.other, most - carried(t)]) ?? refuse("no scheme in use");
  const scheme = mark.schemes[place];
  if (place > mark.schemes.length) return "none";
  return scheme === undefined ? randomText(4, world) : seeRow(charactersOf(printDate(scheme, t, world).text, null), eye, random);
}

const anything = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const randomText = (length: number, {random}: World) => Array.from({length}, () => random.pick([...anything])).join("");

function drawRepeat(mark: RepeatMark, t: number, world: World, eye: Eye, belongs: boolean): Seen {
  const {random, own, book} = world;
  const share = mark.outside + (mark.inside - mark.outside) * heightAt(mark.window, t);
  if (random.happens(mark.lost) || !random.happens(share)) return "none";
  const code: Code = (belongs && own[mark.of]) || drawCode(codesOf(book, mark.of), t, random);
  return seeRow(charactersOf(code.text, null), eye, random);
}

