// The arithmetic of the price tape: which money it runs over, where it has its marks, where twenty stitches lie.

export interface TapeScale {
  /** In the smallest unit of the currency. */
  readonly low: number;
  readonly high: number;
  /** Pixels from the left edge; what lies outside is held at the edges. */
  readonly x: (cents: number) => number;
  /** Marks of the tape; the long ones carry a figure. */
  readonly marks: readonly {readonly cents: number; readonly long: boolean}[];
}

const roomForFigure = 62;

/** @param shown  every amount that must be in sight, at least one */
export function tapeScale(shown: readonly number[], width: number, edge = 8): TapeScale {
  const [least, most] = [Math.min(...shown), Math.max(...shown)];
  // A tape that begins at nothing is read at a glance; one far from it would waste most of its length.
  const from = least < most * 0.5 ? 0 : least - (most - least) * 0.25 - 1;
  const step = niceUp(((most - from) * roomForFigure) / Math.max(roomForFigure, width - 2 * edge));
  const [low, high] = [Math.max(0, Math.floor(from / step) * step), Math.max(step, Math.ceil(most / step) * step)];
  const x = (cents: number) => edge + Math.min(1, Math.max(0, (cents - low) / (high - low))) * (width - 2 * edge);
  const parts = /^[2]/.test(String(step)) ? 4 : 5;
  const count = Math.round(((high - low) / step) * parts);
  const marks = Array.from({length: count + 1}, (_, i) => ({cents: low + (i * step) / parts, long: i % parts === 0}));
  return {low, high, x, marks: step >= parts ? marks : marks.filter(({long}) => long)};
}

/** The least of 1, 2, 5, 10, 20 ... that is not below. */
function niceUp(least: number): number {
  const ten = 10 ** Math.floor(Math.log10(Math.max(1, least)));
  return [1, 2, 5, 10].map((times) => times * ten).find((step) => step >= least) ?? ten * 10;
}

/**
 * Twenty prices, each as likely as the next: the middles between the steps of 5 in 100.
 * @param steps  19, ascending: 5, 10 ... 95 in 100 sales bring at most so much
 */
export function twentyOf(steps: readonly number[]): readonly number[] {
  const between = (a: number, b: number) => (a > 0 ? Math.sqrt(a * b) : (a + b) / 2);
  const [first, second] = [steps[0]!, steps[1]!];
  const [last, before] = [steps.at(-1)!, steps.at(-2)!];
  const beyond = (end: number, inner: number) => (inner > 0 && end > 0 ? end * Math.sqrt(end / inner) : Math.max(0, end + (end - inner) / 2));
  return [beyond(first, second), ...steps.slice(1).map((step, i) => between(steps[i]!, step)), beyond(last, before)];
}

/** Stitches heaped where they lie: each with its column and how many lie below it. */
export function heap(prices: readonly number[], scale: TapeScale, column: number): readonly {readonly x: number; readonly above: number}[] {
  const heights = new Map<number, number>();
  return prices.map((cents) => {
    const at = Math.round(scale.x(cents) / column);
    const above = heights.get(at) ?? 0;
    heights.set(at, above + 1);
    return {x: at * column, above};
  });
}
