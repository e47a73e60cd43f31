// Label kinds by their rows, and photos by the words around them.
import {describe, expect, it} from "vitest";
import {suggestKinds} from "../../../commands/reading/suggest-kinds.ts";
import {makeWorld} from "../../../commands/world.ts";
import {parseMonth} from "../../../engine/index.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";

const world = makeWorld(shippedBooks().books!, parseMonth("2026-11")!);
const odds = (rows: Parameters<typeof suggestKinds>[0]) => suggestKinds(rows, world, {makers: ["marrowfield"]});

describe("label kinds", () => {
  it("have odds that add up to 1, the kind whose layout fits first", () => {
    const kinds = odds(["412-0318", "3 8 21", "W 32 L 34"]);
    expect(kinds[0]).toMatchObject({maker: "marrowfield", kind: "green-satin", name: "green-on-white satin label"});
    expect(kinds.reduce((sum, {odds: p}) => sum + p, 0)).toBeCloseTo(1, 9);
    expect(kinds.some(({kind}) => kind === null)).toBe(true);
  });
  it("are told apart by the order of fields", () => {
    expect(odds(["3 8 21", "412-0318"]).slice(0, 2).map(({kind}) => kind).sort()).toEqual(["green-satin", "plain-white"]);
    expect(odds(["214 3 8 5", "412-0517"])[0]!.kind).toBe("blue-nylon");
  });
  it("are moved by the words beside the codes: washing words are not as old as a label that had none", () => {
    const without = odds(["412-0318", "8 6"]);
    const words = odds(["MACHINE WASH WARM", "412-0318", "8 6"]);
    const early = (kinds: typeof without) => kinds.find(({kind}) => kind === "white-cotton")!.odds;
    expect(early(words)).toBeLessThan(early(without));
  });
  it("take rows as a reader sees them", () => {
    const kinds = odds([{readings: [{text: "412-0318", weight: 0.6}, {text: "412-0316", weight: 0.2}], none: 0.2}, {readings: [{text: "3 8 21", weight: 0.5}, {text: "38 21", weight: 0.4}], none: 0.1}]);
    expect(kinds.slice(0, 2).map(({kind}) => kind).sort()).toEqual(["green-satin", "plain-white"]);
  });
  it("are not guessed from words alone or from nothing", () => {
    expect(odds(["MACHINE WASH WARM", "100% COTTON"])).toEqual([]);
    expect(odds([])).toEqual([]);
  });
});
