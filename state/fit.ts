// Would it fit: the garment's measures less the body's, point by point, in words.
import {easeTable, fitWords, type EaseLine} from "./fit-table.ts";
import type {GarmentKind} from "./garment-kind.ts";
import {readLength, sayMm, toMm} from "./length.ts";
import type {Sizes, TypedLength} from "./model.ts";
import {bodyNames, type BodyMeasure} from "./point-shape.ts";
import {measuredOf, type Measured} from "./point.ts";

/** Measures of a body, as typed. */
export type Body = Readonly<Partial<Record<BodyMeasure, TypedLength>>>;

export interface PointFit {
  readonly point: string;
  readonly name: string;
  readonly body: BodyMeasure;
  /** Garment less body, in millimetres. */
  readonly easeMm: number;
  /** 0 too little, 1 close, 2 right, 3 generous, 4 too much. */
  readonly step: 0 | 1 | 2 | 3 | 4;
  readonly word: string;
  /** The word it may be as well, for all that hand and tape allow; null when it is clear. */
  readonly perhaps: string | null;
  readonly sentence: string;
}

export interface Fit {
  readonly points: readonly PointFit[];
  /** What the garment or the body was not measured for. */
  readonly missing: readonly string[];
  readonly sentence: string;
}

/** A shorter sleeve is meant to be short, and not compared with an arm. Common practice, no source. */
const shortSleeveMm = 400;

/** The measures of a body that a kind of garment is compared with. */
export const bodyAsked = (kind: GarmentKind): readonly BodyMeasure[] => easeTable[kind].map(({body}) => body);

/**
 * Compares a garment with a body.
 * @edge a measure of the body that cannot be read is as good as none
 */
export function fitOf(kind: GarmentKind, sizes: Pick<Sizes, "measures">, body: Body): Fit {
  const measured = measuredOf(kind, sizes);
  const points: PointFit[] = [];
  const missing: string[] = [];
  for (const line of easeTable[kind]) {
    const of = measured.find(({point, length}) => point.id === line.point && (line.body !== "arm" || toMm(length) >= shortSleeveMm));
    const typed = body[line.body];
    const length = typed && readLength(typed);
    if (of && length) points.push(pointFit(line, of, toMm(length)));
    else if (of || typed) missing.push(of ? `the body's ${bodyNames[line.body]}` : `the garment's ${line.point}`);
  }
  return {points, missing, sentence: sayFit(points)};
}

function pointFit(line: EaseLine, {point, whole, errorMm}: Measured, bodyMm: number): PointFit {
  const easeMm = toMm(whole) - bodyMm;
  const words = fitWords[line.way];
  const stepAt = (ease: number) => line.ends.filter((end) => ease >= end).length as PointFit["step"];
  const step = stepAt(easeMm);
  const error = errorMm * (point.flat ? 2 : 1);
  const other = [stepAt(easeMm - error), stepAt(easeMm + error)].find((one) => one !== step);
  const perhaps = other === undefined ? null : words[other]!;
  const said = sayMm(Math.abs(easeMm), whole.unit);
  return {
    point: point.id, name: point.name, body: line.body, easeMm, step, word: words[step]!, perhaps,
    sentence: `${point.name} ${sayMm(whole.mm, whole.unit)}${point.flat ? " all round" : ""}, body ${sayMm(bodyMm, whole.unit)}: ${Math.abs(easeMm) < 1 ? "the same" : `${said} ${easeMm > 0 ? "more" : "less"}`}, ${words[step]!}${perhaps ? `, perhaps ${perhaps}` : ""}`,
  };
}

function sayFit(points: readonly PointFit[]): string {
  if (points.length === 0) return "Nothing can be compared yet.";
  const named = (steps: readonly number[]) => points.filter(({step}) => steps.includes(step)).map(({name, word}) => `${word} at the ${name}`);
  const [never, little, much] = [named([0]), named([1, 3]), named([4])];
  if (never.length > 0) return `It would not fit: ${never.join(", ")}.`;
  if (much.length > 0) return `It would hang loose: ${much.join(", ")}.`;
  return little.length > 0 ? `It would fit: ${little.join(", ")}.` : "It would fit well.";
}
