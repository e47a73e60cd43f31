// Which backups stay: seven days, four weeks, twelve months, each by its newest.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {backupDue, backupsToKeep, kept} from "../../../store/backup/which-to-keep.ts";

const noon = (day: string) => `${day}T12:00:00.000Z`;
const days = (first: string, count: number) => Array.from({length: count}, (_, i) => noon(new Date(Date.parse(noon(first)) + i * 86_400_000).toISOString().slice(0, 10)));
const sorted = (times: ReadonlySet<string>) => [...times].map((time) => time.slice(0, 10)).sort();

test("of daily backups over a year seven days, the newest of four weeks and of twelve months stay", () => {
  // 2026-11-25 is a Wednesday. Source: date(1) of GNU coreutils.
  expect(sorted(backupsToKeep(days("2025-11-01", 390)))).toEqual([
    "2025-12-31", "2026-01-31", "2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31", "2026-06-30", "2026-07-31", "2026-08-31", "2026-09-30", "2026-10-31",
    "2026-11-08", "2026-11-15", "2026-11-19", "2026-11-20", "2026-11-21", "2026-11-22", "2026-11-23", "2026-11-24", "2026-11-25",
  ]);
});

test("of several backups of one day the newest stays", () => {
  expect([...backupsToKeep(["2026-06-01T08:00:00.000Z", "2026-06-01T20:00:00.000Z", "2026-06-01T09:00:00.000Z"])]).toEqual(["2026-06-01T20:00:00.000Z"]);
});

test("a rack that is rarely used keeps its last ones however old they are", () => {
  const rare = ["2019-03-01", "2020-04-01", "2021-05-01", "2022-06-01"].map(noon);
  expect(sorted(backupsToKeep(rare))).toEqual(rare.map((time) => time.slice(0, 10)));
});

const instant = fc.date({min: new Date("2020-01-01T00:00:00Z"), max: new Date("2030-01-01T00:00:00Z"), noInvalidDate: true}).map((date) => date.toISOString());

test("the newest always stays, never more than 23 do, and thinning twice is thinning once", () => {
  fc.assert(
    fc.property(fc.uniqueArray(instant, {minLength: 1, maxLength: 200}), (times) => {
      const keep = backupsToKeep(times);
      expect(keep.has([...times].sort().at(-1)!)).toBe(true);
      expect(keep.size).toBeLessThanOrEqual(kept.days + kept.weeks + kept.months);
      expect(backupsToKeep([...keep])).toEqual(keep);
      for (const time of keep) expect(times).toContain(time);
    }),
  );
});

test("thinning day by day keeps what thinning at the end keeps", () => {
  let day: readonly string[] = [];
  for (const time of days("2025-01-01", 500)) day = [...backupsToKeep([...day, time])];
  expect(sorted(new Set(day))).toEqual(sorted(backupsToKeep(days("2025-01-01", 500))));
});

test("a backup is due once a day", () => {
  expect(backupDue(noon("2026-06-02"), [])).toBe(true);
  expect(backupDue("2026-06-02T00:00:01.000Z", ["2026-06-01T23:59:59.000Z"])).toBe(true);
  expect(backupDue(noon("2026-06-02"), ["2026-06-02T00:00:00.000Z", "2020-01-01T00:00:00.000Z"])).toBe(false);
});
