// Workers that examine: the same answers as without them, in order, by the books of the moment.
import {expect, test} from "vitest";
import {dateAll} from "../../commands/rack/rack.ts";
import {makeWorld} from "../../commands/world.ts";
import type {Book, Garment} from "../../engine/index.ts";
import {makeCrew} from "../../server/crew.ts";
import {inThisThread} from "../../server/examiners.ts";
import {world} from "../commands/small-world.ts";

const now = "2026-11-05T00:00:00.000Z";
const garments: Garment[] = ["grey-tape", "blue-satin", "no-such-label", "grey-tape"].map((label, i) => ({garment: `${i}`, maker: "wickerlow", saw: {label, rows: [`${i + 3} 8 21`]}}));
const newer = (): Book => ({...structuredClone(world.books[0]!), edition: 2});

test("workers answer as this thread does, however the work is shared", async () => {
  const crew = makeCrew(3);
  try {
    expect(await crew.date(garments, world, now)).toEqual(dateAll(garments, world, now));
    expect(await crew.date(garments.slice(0, 1), world, now)).toEqual(dateAll(garments.slice(0, 1), world, now));
    expect(await crew.date([], world, now)).toEqual([]);
    for (const garment of garments) {
      const input = {garment, trace: garment === garments[0]};
      expect(await crew.examine(input, world)).toEqual(await inThisThread.examine(input, world));
    }
  } finally {
    await crew.close();
  }
});

test("when the books change meanwhile, what was asked before is answered by the old ones, what is asked now by the new", async () => {
  const crew = makeCrew(1);
  try {
    const later = makeWorld([newer()], world.today);
    const [old, fresh] = await Promise.all([crew.date(garments, world, now), crew.date(garments, later, now)]);
    const editions = (dated: typeof old) => dated.flatMap(({dating}) => dating?.books.map(({edition}) => edition) ?? []);
    expect(new Set(editions(old))).toEqual(new Set([1]));
    expect(new Set(editions(fresh))).toEqual(new Set([2]));
  } finally {
    await crew.close();
  }
});

test("work that is under way when the workers end fails plainly, and does not hang", async () => {
  const crew = makeCrew(1);
  const under = crew.date(garments, world, now);
  under.catch(() => {});
  await crew.close();
  await expect(under).rejects.toThrow("ended before it answered");
});

test("a garment that breaks a worker fails alone: the next is answered by a new one", async () => {
  const crew = makeCrew(1);
  try {
    const broken = {garment: "x", maker: "wickerlow", saw: {rows: [null]}} as unknown as Garment;
    await expect(crew.date([broken], world, now)).rejects.toThrow();
    expect((await crew.date(garments.slice(0, 1), world, now))[0]!.dating?.words).toBe("March 1968");
  } finally {
    await crew.close();
  }
});
