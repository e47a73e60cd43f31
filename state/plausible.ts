// Whether the measures of a garment hang together, in plain words beside the points they concern.
import type {Problem} from "../engine/problem.ts";
import {kindNames, type GarmentKind} from "./garment-kind.ts";
import {readLength, sayMm, toMm, type LengthUnit} from "./length.ts";
import type {Sizes} from "./model.ts";
import {measuredOf, pointOf, pointsOf, type Measured} from "./point.ts";
import * as say from "./problems.ts";
import {relationTable} from "./relation-table.ts";
import {letterOf, letterTable} from "./tag-size.ts";

/** A problem with the points of measure that it stands beside. */
export interface SizeDoubt {
  readonly points: readonly string[];
  readonly problem: Problem;
}

/**
 * Every doubt about the measures of one garment; none when all hang together within what hand and tape allow.
 * @edge points that are not measured are not missed; a length that is doubted by itself is not doubted again beside others
 */
export function sizeDoubts(kind: GarmentKind, sizes: Sizes): SizeDoubt[] {
  const measured = measuredOf(kind, sizes);
  const alone = [...unreadable(kind, sizes), ...measured.flatMap(aloneDoubts)];
  const doubted = new Set(alone.flatMap(({points}) => points));
  return [...alone, ...togetherDoubts(kind, measured.filter(({point}) => !doubted.has(point.id))), ...letterDoubts(measured, sizes)];
}

function unreadable(kind: GarmentKind, {measures}: Sizes): SizeDoubt[] {
  const seen = new Set<string>();
  return measures.flatMap(({point, length}) => {
    const name = pointOf(kind, point)?.name ?? point;
    const twice = seen.has(point);
    seen.add(point);
    if (twice) return [{points: [point], problem: say.twicePoint(name)}];
    if (!pointOf(kind, point)) return [{points: [point], problem: say.strangePoint(name, kindNames[kind], pointsOf(kind).map((one) => one.id))}];
    return readLength(length) ? [] : [{points: [point], problem: say.notLength(name, length.typed)}];
  });
}

function aloneDoubts({point, length, measure}: Measured): SizeDoubt[] {
  const mm = toMm(length);
  const [low, high] = point.usual;
  const fits = (value: number) => value >= low && value <= high;
  if (fits(mm)) return [];
  const said = sayMm(length.mm, length.unit);
  const other: LengthUnit = length.unit === "in" ? "cm" : "in";
  const swapped = length.unit === "in" ? mm / 2.54 : mm * 2.54;
  // A unit that was typed with the figures is meant.
  const carries = /[a-z"″”]/i.test(measure.length.typed);
  const hints = [
    ...(point.flat && fits(mm / 2) ? [`enter the half, ${sayMm(mm / 2, length.unit)}, if it was measured all round: it is laid flat here and doubled by itself`] : []),
    ...(!carries && fits(swapped) ? [`write ${measure.length.typed.trim()} ${other} if that was meant`] : []),
  ];
  const problem = say.unusual(point.name, said, sayMm(low, length.unit), sayMm(high, length.unit), hints);
  return [{points: [point.id], problem}];
}

function togetherDoubts(kind: GarmentKind, measured: readonly Measured[]): SizeDoubt[] {
  const doubts: SizeDoubt[] = [];
  for (const {terms, low, high, says} of relationTable[kind]) {
    const parts = Object.entries(terms).map(([id, weight]) => ({weight, of: measured.find(({point}) => point.id === id)}));
    if (parts.some(({of}) => !of)) continue;
    const sum = parts.reduce((all, {weight, of}) => all + weight * toMm(of!.length), 0);
    const slack = parts.reduce((all, {weight, of}) => all + Math.abs(weight) * of!.errorMm, 0);
    const off = Math.max(low - sum, sum - high);
    const points = Object.keys(terms);
    if (off <= slack || doubts.some((doubt) => doubt.problem.why === `mostly ${says}`)) continue;
    const unit = parts[0]!.of!.length.unit;
    const names = parts.map(({of}) => `${of!.point.name} ${sayMm(of!.length.mm, of!.length.unit)}`);
    doubts.push({points, problem: say.apart(parts.map(({of}) => of!.point.name).join(", "), `${names.slice(0, -1).join(", ")} and ${names.at(-1)!}`, says, sayMm(off, unit))});
  }
  return doubts;
}

/** A chest below the body that the size on the tag is for. */
function letterDoubts(measured: readonly Measured[], {tag}: Sizes): SizeDoubt[] {
  const chest = measured.find(({point}) => point.id === "chest");
  const letter = tag && letterOf(tag.text);
  const body = letter ? {mm: 10 * letterTable[letter]![0], says: `${letterTable[letter]![0]} cm (letters of EN 13402-3, from memory; older tags ran smaller)`} : tag?.chest ? {mm: 25.4 * tag.chest, says: `${tag.chest} in`} : null;
  if (!tag || !chest || !body || 2 * toMm(chest.length) + 2 * chest.errorMm >= body.mm) return [];
  return [{points: ["chest"], problem: say.belowTag("chest", sayMm(chest.whole.mm, chest.length.unit), letter ?? tag.text, body.says)}];
}
