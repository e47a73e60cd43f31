// The year shares of every garment in memory, kept in step with the database: summing 50,000 of them must not read 50,000 rows.
import type {Database} from "./database.ts";
import {unpackYears} from "./columns.ts";

export interface YearShares {
  readonly first: number;
  readonly shares: Float32Array;
}

/** Year shares by row number; brought up to date by what changed since, in this process or another. */
export function yearsIn(db: Database): () => ReadonlyMap<number, YearShares> {
  const known = new Map<number, YearShares>();
  let seen = 0;
  return () => {
    const last = Number(db.one<{last: number | null}>("SELECT max(seq) AS last FROM garment")!.last ?? 0);
    if (last > seen) {
      for (const {n, years} of db.all<{n: number; years: Uint8Array | null}>("SELECT n, years FROM garment WHERE seq > ?", seen)) {
        if (years) known.set(n, unpackYears(years));
        else known.delete(n);
      }
      seen = last;
    }
    return known;
  };
}

/** Probability that a garment lies in the years, both included. */
export function shareBetween({first, shares}: YearShares, from: number | null, until: number | null): number {
  let total = 0;
  for (let i = 0; i < shares.length; i++) if ((from === null || first + i >= from) && (until === null || first + i <= until)) total += shares[i]!;
  return total;
}
