// Days and times of making as people write them in tables.

/** Which comes first where a day is written with strokes: 3/4/2026. */
export type DayOrder = "day first" | "month first";

/**
 * A day: 2026-03-14, 14.3.2026 and 3/14/2026; with a time behind it, which does not count.
 * @returns "either" when day and month could each be the other
 */
export function readDay(text: string, order: DayOrder | null): string | "either" | null {
  const cell = text.trim().replace(/[T ]\d{1,2}:\d{2}.*$/, "");
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(cell);
  if (iso) return dayOf(iso[1]!, iso[2]!, iso[3]!);
  const points = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(cell);
  if (points) return dayOf(points[3]!, points[2]!, points[1]!);
  const strokes = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4})$/.exec(cell);
  if (!strokes) return null;
  const [, first, second, year] = strokes as unknown as [string, string, string, string];
  const [dayFirst, monthFirst] = [dayOf(year, second, first), dayOf(year, first, second)];
  if (order) return order === "day first" ? dayFirst : monthFirst;
  if (dayFirst && monthFirst && dayFirst !== monthFirst) return "either";
  return dayFirst ?? monthFirst;
}

function dayOf(year: string, month: string, day: string): string | null {
  const text = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text) ? text : null;
}

export interface Made {
  readonly from: string;
  readonly until: string;
}

/**
 * A time of making: 1968, 1960s, 1968-03, 1966-1969, 1966-05/1969-02, 1966 to 1969; c. and ca. before it do not count.
 * @returns months, both included; null when it cannot be read
 */
export function readMade(text: string): Made | null {
  const cell = text.trim().toLowerCase().replace(/^(?:c|ca|circa|about)\.?\s*/, "");
  const one = pointOf(cell);
  if (one) return one;
  const two = /^(\d{4}(?:-\d{2})?)\s*(?:-|–|—|\/|to|until|\.\.)\s*(\d{4}(?:-\d{2})?)$/.exec(cell);
  if (!two) return null;
  const [from, until] = [pointOf(two[1]!), pointOf(two[2]!)];
  return from && until && from.from <= until.until ? {from: from.from, until: until.until} : null;
}

function pointOf(text: string): Made | null {
  if (/^\d{4}$/.test(text)) return {from: `${text}-01`, until: `${text}-12`};
  if (/^\d{3}0'?s$/.test(text)) return {from: `${text.slice(0, 4)}-01`, until: `${Number(text.slice(0, 4)) + 9}-12`};
  return /^\d{4}-(?:0[1-9]|1[0-2])$/.test(text) ? {from: text, until: text} : null;
}
