// The latest day that it can be for anybody: where the owner's clock is ahead, today's sale is not one of tomorrow.

const hour = 3_600_000;

/** @param now  UTC; the easternmost clocks are 14 hours ahead (ISO 8601, UTC+14) */
export const lastDay = (now: string): string => new Date(Date.parse(now) + 14 * hour).toISOString().slice(0, 10);
