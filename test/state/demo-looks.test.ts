// The invented looks of the demo show what measuring is for: nearly all hang together, one hem is short, one pair shrank, and the grades reach from deadstock down.
import {expect, test} from "vitest";
import {inventedLooks} from "../../scripts/demo/invented-looks.ts";
import {demoGarments} from "../../rulebooks/load.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {gradeOf} from "../../state/grade.ts";
import {sizeDoubts} from "../../state/plausible.ts";
import {tagChecks} from "../../state/tag-check.ts";

const looks = inventedLooks();
const typeOf = (number: string) => kindOf(demoGarments().find(({garment}) => garment === number)!.type);

test("no invented garment has measures that do not hang together", () => {
  for (const [number, {sizes}] of Object.entries(looks)) expect([number, sizeDoubts(typeOf(number), sizes).map(({problem}) => problem.what)]).toEqual([number, []]);
});

test("the short hem and the wash are told apart", () => {
  const causes = (number: string) => tagChecks(typeOf(number), looks[number]!.sizes, looks[number]!.state).map(({causes: [best]}) => best!.id);
  expect(causes("0155")).toEqual(["kept", "shortened-hem"]);
  expect(causes("0160")).toEqual(["shrunk", "shrunk"]);
});

test("their grades reach from deadstock to fair", () => {
  const grades = new Set(Object.values(looks).map(({state}) => gradeOf(state).grade));
  expect([...grades]).toEqual(expect.arrayContaining(["deadstock", "excellent", "very good", "good", "fair"]));
});
