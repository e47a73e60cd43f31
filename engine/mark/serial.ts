// A number that only grows with time: registration and patent numbers say "no earlier than", with a soft lag from issue to use.
import {parseMonth} from "../month/month.ts";
import type {SerialMark} from "../rule/schema.ts";
import {holds} from "../rule/when.ts";
import type {Span} from "../window/window.ts";
import {constant, outcome, type MarkKind} from "./ready-mark.ts";

/**
 * The month in which a number was issued, by straight lines between the knots.
 * @returns a real month index (the start of the month plus a fraction), or null outside the knots
 */
export function issueMonth(mark: Pick<SerialMark, "knots">, number: number): number | null {
  const knots = mark.knots.map((knot) => ({month: parseMonth(knot.month)! as number, number: knot.number}));
  for (let i = 1; i < knots.length; i++) {
    const [a, b] = [knots[i - 1]!, knots[i]!];
    if (number >= a.number && number <= b.number && b.number > a.number) return a.month + ((number - a.number) / (b.number - a.number)) * (b.month - a.month);
  }
  return null;
}

/** Height of use `x` months after issue. Source: own choice, docs/model.md section 2. */
function useHeight({fuzz, use}: Pick<SerialMark, "fuzz" | "use">, x: number): number {
  const top = Math.max(use.rise, fuzz);
  const up = top + fuzz === 0 ? (x >= 0 ? 1 : 0) : Math.min(1, Math.max(0, (x + fuzz) / (top + fuzz)));
  if (use.usual === null || use.usual === undefined) return up;
  const last = Math.max(use.longest ?? use.usual, use.usual);
  const down = last === use.usual ? (x <= last ? 1 : 0) : Math.min(1, Math.max(0, (last - x) / (last - use.usual)));
  return up * down;
}

/** Makes a serial ready. */
export function serialKind(mark: SerialMark, axis: Span): MarkKind {
  const n = axis.until - axis.from + 1;
  let circulation: {total: Float64Array; byIssue: Map<number, Float64Array>} | null = null;
  /** Numbers in use by month, in all and by five years of issue: enough to tell what a look at the number would settle. */
  const inUse = () => {
    if (circulation) return circulation;
    const total = new Float64Array(n);
    const byIssue = new Map<number, Float64Array>();
    const first = parseMonth(mark.knots[0]!.month)!;
    // Heights by months since issue, from the last issue after the axis' start to the first before its end.
    const last = parseMonth(mark.knots.at(-1)!.month)!;
    const shift = last - axis.from;
    const table = Float64Array.from({length: n + last - first + 1}, (_, i) => useHeight(mark, i - shift));
    for (let i = 1; i < mark.knots.length; i++) {
      const from = parseMonth(mark.knots[i - 1]!.month)!;
      const until = parseMonth(mark.knots[i]!.month)!;
      const each = (mark.knots[i]!.number - mark.knots[i - 1]!.number) / (until - from);
      for (let j = from as number; j < until; j++) {
        const five = Math.floor(j / 60);
        let vector = byIssue.get(five);
        if (!vector) byIssue.set(five, (vector = new Float64Array(n)));
        const offset = axis.from - j + shift;
        for (let t = 0; t < n; t++) vector[t]! += each * table[offset + t]!;
      }
    }
    for (const vector of byIssue.values()) for (let t = 0; t < n; t++) total[t]! += vector[t]!;
    return (circulation = {total, byIssue});
  };
  return {
    chance(seen, in_) {
      const applies = holds(mark.when, in_);
      if (seen.kind === "missing") return applies ? inUse().total.map((all) => (all > 0 ? mark.lost : 1)) : constant(n, 1 - mark.elsewhere);
      if (seen.kind !== "serial") return constant(n, 1);
      if (!applies) return constant(n, mark.elsewhere / (mark.knots.at(-1)!.number - mark.knots[0]!.number));
      const issued = issueMonth(mark, seen.number);
      if (issued === null) return constant(n, 1);
      const {total} = inUse();
      return Float64Array.from(total, (all, t) => (all > 0 ? useHeight(mark, axis.from + t + 0.5 - issued) / all : 0));
    },
    outcomes(in_) {
      if (!holds(mark.when, in_)) return [];
      const {total, byIssue} = inUse();
      const issued = [...byIssue].map(([five, vector]) =>
        outcome(`issued ${1900 + five * 5} or later`, vector.map((v, t) => (total[t]! > 0 ? ((1 - mark.lost) * v) / total[t]! : 0))),
      );
      return [...issued, outcome("none", total.map((all) => (all > 0 ? mark.lost : 1)))];
    },
    distinguish: (into) => into.note(mark.when),
  };
}
