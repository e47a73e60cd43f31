// Invents what was paid for some of the demo's garments, what went into them, and what a few of them brought.
import type {Content} from "../../store/model.ts";
import {moneyStorySchema} from "../../worth/model.ts";

const usd = (dollars: number) => ({cents: dollars * 100, currency: "USD"});

/** Number; bought on; paid; what went into it; listed on; asked; sold on, for, through. */
type Line = readonly [number: string, boughtOn: string, paid: number, costs: readonly (readonly [string, number])[], listedOn?: string, asked?: number, sold?: readonly [on: string, price: number, channel: string]];

const lines: readonly Line[] = [
  ["0149", "2026-02-14", 60, [["washing", 6]], "2026-02-28", 190],
  ["0150", "2026-03-07", 45, [["zip mended", 18]], "2026-03-21", 170],
  ["0155", "2025-04-12", 70, [], "2025-05-03", 140],
  ["0158", "2026-01-17", 38, [["washing", 6]], "2026-02-01", 110],
  ["0160", "2026-05-09", 80, [["patch sewn on", 12]]],
  ["0166", "2025-09-06", 30, [["washing", 6]], "2025-09-13", 105, ["2025-10-18", 95, "market stall"]],
  ["0168", "2025-06-21", 85, [["washing", 6], ["button replaced", 4]], "2025-07-05", 190, ["2025-08-09", 175, "own shop"]],
  ["0172", "2025-11-15", 22, [], "2025-11-22", 70, ["2026-01-10", 60, "market stall"]],
  ["0178", "2026-02-21", 15, [["washing", 6]], "2026-03-01", 55, ["2026-04-18", 48, "online"]],
  ["0183", "2025-08-30", 40, [], "2025-09-14", 120],
  ["0200", "2026-03-28", 12, [], "2026-04-04", 50, ["2026-05-30", 45, "market stall"]],
  ["0303", "2026-06-13", 110, [["washing", 8]], "2026-07-04", 320],
  ["0313", "2025-10-04", 55, [["washing", 6]], "2025-10-18", 150, ["2025-12-06", 140, "own shop"]],
  ["0315", "2026-04-25", 48, [["moth holes mended", 24]], "2026-05-16", 160, ["2026-07-11", 130, "online"]],
  ["0319", "2025-05-17", 65, [], "2025-06-01", 130],
  ["0321", "2026-07-18", 58, [["washing", 6]], "2026-08-01", 135, ["2026-09-19", 125, "market stall"]],
  ["0402", "2026-08-15", 25, [["washing", 6]], "2026-08-29", 95],
  ["0408", "2026-01-31", 8, [], "2026-02-07", 30, ["2026-03-14", 25, "market stall"]],
];

/** What a garment's content holds beside the garment, by number. */
export function inventedStories(): Readonly<Record<string, Pick<Content, "standing" | "paid" | "asked" | "money">>> {
  return Object.fromEntries(
    lines.map(([number, boughtOn, paid, costs, listedOn = null, asked, sold]) => [
      number,
      {
        standing: sold ? ("sold" as const) : listedOn ? ("for sale" as const) : ("to examine" as const),
        paid: usd(paid),
        asked: asked === undefined ? null : usd(asked),
        money: moneyStorySchema.parse({
          boughtOn, listedOn,
          costs: costs.map(([what, dollars]) => ({what, amount: usd(dollars), on: boughtOn})),
          sold: sold ? {on: sold[0], price: usd(sold[1]), channel: sold[2], fees: sold[2] === "online" ? {cents: Math.round(sold[1] * 12), currency: "USD"} : null, postage: sold[2] === "online" ? usd(9) : null, grade: "good"} : null,
        }),
      },
    ]),
  );
}
