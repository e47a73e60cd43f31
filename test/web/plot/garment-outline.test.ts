// Places on the drawings can be pressed one by one with a thumb, and each drawing is found by the words of a dealer.
// Source of the 24 pixels: WCAG 2.2, success criterion 2.5.8; the drawing is shown at least 312 pixels wide for its 340 units.
import {expect, test} from "vitest";
import {outlineOf, outlines} from "../../../web/plot/garment-outline.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";

const apart = 24 * (340 / 312);

test.each(Object.keys(outlines))("on %s no two places overlap, and none hangs over the edge", (name) => {
  const spots = Object.entries(outlines[name as keyof typeof outlines].spots);
  for (const [one, a] of spots) {
    expect([one, a.x >= 12 && a.x <= 328 && a.y >= 12 && a.y <= 368]).toEqual([one, true]);
    for (const [other, b] of spots) if (one < other) expect([one, other, Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) >= apart]).toEqual([one, other, true]);
  }
});

test("a place on a drawing is one that the books know", () => {
  const known = new Set(shippedBooks().books!.flatMap(({places}) => Object.keys(places)));
  for (const {spots} of Object.values(outlines)) for (const id of Object.keys(spots)) expect([id, known.has(id)]).toEqual([id, true]);
});

test.each([["trousers", "trousers"], ["bib overalls", "overalls"], ["work shirt", "shirt"], ["sweatshirt", "sweatshirt or tee"], ["tee", "sweatshirt or tee"], ["chore jacket", "jacket"], ["waistcoat", "jacket"], ["", "trousers"], ["apron", "trousers"]])(
  "%s is drawn as %s",
  (type, name) => expect(outlineOf(type).name).toBe(name),
);
