// What is kept of a finding, and why it moved.
import {expect, test} from "vitest";
import {datingOf} from "../../../commands/rack/dating.ts";
import {openRack} from "../../../commands/rack/open-rack.ts";
import {addGarment} from "../../../commands/rack/add-garment.ts";
import {importGarments} from "../../../commands/rack/import-garments.ts";
import {performOnRack} from "../../../commands/rack/rack-command.ts";
import {sameDating, whyMoved} from "../../../commands/rack/why-moved.ts";
import {makeWorld} from "../../../commands/world.ts";
import {month, type Book, type Garment} from "../../../engine/index.ts";
import {demoGarments, shippedBooks} from "../../../rulebooks/load.ts";
import type {Dating, GarmentRecord} from "../../../store/model.ts";
import {storeInMemory} from "../../server/test-app.ts";
import {world as small} from "../small-world.ts";

const shipped = makeWorld(shippedBooks().books!, month(2026, 11));
const at = "2026-11-05T00:00:00.000Z";
const date = (garment: Garment, world = small): Dating => datingOf(world.examiner().examine(garment).finding!, world.books, at);
const demo = (number: string) => demoGarments().find(({garment}) => garment === number)!;

test("the years of a dating hold all its probability, and begin and end with a year that has some", () => {
  for (const number of ["0147", "0203", "0204", "0301"]) {
    const {years, probability} = date(demo(number), shipped);
    expect(years.shares.reduce((a, b) => a + b)).toBeCloseTo(1, 3);
    expect(Math.min(years.shares[0]!, years.shares.at(-1)!)).toBeGreaterThan(0);
    expect(probability).toBeLessThanOrEqual(1);
  }
});

test("years are those of the months: a garment of March 1968 lies in 1968 by as much as its months do", () => {
  const {years, best, plant} = date(demo("0147"), shipped);
  const finding = shipped.examiner().examine(demo("0147")).finding!;
  expect(best).toBe("1968-03");
  expect(years.shares[1968 - years.first]).toBeCloseTo(finding.years.find(({from}) => from === 1968)!.probability, 5);
  expect(plant).toBe("21");
});

test("a later one in an older look is filed under the years of its making", () => {
  const {kind, years, best} = date(demo("0195"), shipped);
  expect(kind).toBe("two dates");
  expect(Number(best.slice(0, 4))).toBeGreaterThan(1990);
  const late = years.shares.reduce((sum, share, i) => sum + (years.first + i >= 1990 ? share : 0), 0);
  expect(late).toBeGreaterThan(0.5);
});

test("the books of a dating are the public ones and those of the makers in question", () => {
  expect(date(demo("0147"), shipped).books).toEqual([{book: "public", edition: 1}, {book: "marrowfield", edition: 3}]);
  expect(date(demo("0401"), shipped).books).toEqual([{book: "public", edition: 1}]);
  expect(date(demo("0210"), shipped).books.map(({book}) => book).toSorted()).toEqual(["hollin-and-thrale", "marrowfield", "public"]);
});

const garment: Garment = {garment: "7", maker: "wickerlow", saw: {label: "grey-tape"}};
const book = small.books[0]!;
const second = (change: (copy: Book) => void): Book => {
  const copy = structuredClone({...book, edition: 2});
  change(copy);
  return copy;
};
const after = (dating: Dating): Dating => ({...dating, words: "other", books: [{book: "wickerlow", edition: 2}]});

test("what moved a garment is told by the changes about its own marks, before others", () => {
  const before = date(garment);
  const newer = second((copy) => {
    copy.labels!.kinds["grey-tape"]!.window = {ends: ["1979-06", "1980-06"]};
    copy.title = "Another title";
  });
  const why = whyMoved(before, after(before), garment, (_, edition) => (edition === 1 ? book : newer));
  expect(why).toBe("Another title, edition 1 → 2: window of grey-tape ends 1969-06..1970-06 → 1979-06..1980-06");
});

test("an edition that is gone, a book that came or went, and nothing of the kind are told, too", () => {
  const before = date(garment);
  expect(whyMoved(null, before, garment, () => book)).toBe("it had not been dated before");
  expect(whyMoved(before, after(before), garment, () => null)).toBe("wickerlow, edition 1 → 2");
  expect(whyMoved({...before, books: []}, before, garment, () => book)).toContain("it is dated by Wickerlow");
  expect(whyMoved(before, {...before, books: []}, garment, () => book)).toBe("the book wickerlow is no longer used for it");
  expect(whyMoved(before, before, garment, () => book)).toContain("a newer version of the program");
  expect(sameDating(before, {...before, at: "2027-01-01T00:00:00.000Z"})).toBe(true);
  expect(sameDating(before, after(before))).toBe(false);
});

test("without a server the same commands work on the same store, and date at once", async () => {
  const store = storeInMemory();
  const rack = await openRack({store, shipped: small.books, now: at, who: "Ana", today: small.today});
  const added = await performOnRack(addGarment, {content: {garment: {garment: "7", maker: "wickerlow", saw: {label: "grey-tape", rows: ["3 8 21"]}}}}, rack);
  expect(added.answer).toMatchObject({changedBy: "Ana", content: {dating: {words: "March 1968"}}} as Partial<GarmentRecord>);
  const {answer} = await performOnRack(importGarments, {format: "csv", text: "garment,maker,label\n8,wickerlow,blue-satin\n", try: false}, rack);
  expect((await store.get(answer!.ids[0]!))!.content.dating).not.toBeNull();
  expect((await performOnRack(addGarment, {content: 7}, rack)).refused).toBe("unfit");
});
