// A time of making as it is typed: a year, or a month of it; an empty field says nothing.

/** What stands in the field for a stretch of months: whole years as years. */
export function typeMonth(month: string | null, end: "from" | "until"): string {
  if (month === null) return "";
  return month.endsWith(end === "from" ? "-01" : "-12") ? month.slice(0, 4) : month;
}

/**
 * @param end  a year stands for its first month, or for its last
 * @example
 * readMonth("1968", "until") // -> {month: "1968-12", wrong: null}
 */
export function readMonth(text: string, end: "from" | "until"): {readonly month: string | null; readonly wrong: string | null} {
  const bare = text.trim();
  if (bare === "") return {month: null, wrong: null};
  const [, year, month] = /^(\d{4})(?:\s*[-/.]\s*(\d{1,2}))?$/.exec(bare) ?? [];
  const [, monthFirst, yearLast] = /^(\d{1,2})\s*[-/.]\s*(\d{4})$/.exec(bare) ?? [];
  const [y, m] = [year ?? yearLast, Number(month ?? monthFirst ?? (end === "from" ? 1 : 12))];
  if (y === undefined || m < 1 || m > 12) return {month: null, wrong: "A year like 1968, or a month like 1968-03"};
  return {month: `${y}-${String(m).padStart(2, "0")}`, wrong: null};
}
