// Which backups to keep, and whether one is due: by their times alone.

/** How many days, weeks and months back a backup is kept for; each keeps its newest. Source: own choice. */
export const kept = {days: 7, weeks: 4, months: 12} as const;

/**
 * The times of the backups to keep.
 * @param times  UTC, in any order
 * @edge  spans without a backup do not count: of a rack that was used twice a year the last seven days with a backup stay
 */
export function backupsToKeep(times: readonly string[]): ReadonlySet<string> {
  const newestFirst = [...times].sort().reverse();
  const newestOf = (spanOf: (time: string) => string, most: number) => {
    const spans = new Map<string, string>();
    for (const time of newestFirst) if (!spans.has(spanOf(time))) spans.set(spanOf(time), time);
    return [...spans.values()].slice(0, most);
  };
  return new Set([...newestOf(dayOf, kept.days), ...newestOf(weekOf, kept.weeks), ...newestOf(monthOf, kept.months)]);
}

/** Whether no backup was made on this day (UTC). */
export function backupDue(now: string, times: readonly string[]): boolean {
  return !times.some((time) => dayOf(time) === dayOf(now));
}

const dayOf = (time: string) => time.slice(0, 10);
const monthOf = (time: string) => time.slice(0, 7);

/** The Monday that the week began with, as in ISO 8601. */
function weekOf(time: string): string {
  const day = new Date(`${dayOf(time)}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() - ((day.getUTCDay() + 6) % 7));
  return dayOf(day.toISOString());
}
