// Oracle: WebPPL 0.9.15, a general-purpose language for probabilistic programs, enumerates small books month by month and stray by stray.
//         bench/webppl/write-oracle.ts writes webppl.json, which records version and date; WebPPL itself is not needed here.
import {readFileSync} from "node:fs";
import {describe, expect, test} from "vitest";
import {makeExaminer, parseMonth, type Book, type Garment} from "../../engine/index.ts";
import {allClose, close} from "../helper/close.ts";

interface Case {
  readonly id: string;
  readonly books: readonly Book[];
  readonly garment: Garment;
  readonly from: string;
  readonly until: string;
  readonly posterior: readonly number[];
  readonly makers: Readonly<Record<string, number>>;
}

const {cases} = JSON.parse(readFileSync(new URL("webppl.json", import.meta.url), "utf8")) as {readonly cases: readonly Case[]};
const asked = {abs: 1e-9, because: "masses that sum to 1, as the design demands"} as const;

test("there are books enough to compare", () => {
  expect(cases.length).toBeGreaterThanOrEqual(6);
});

describe("the engine agrees with WebPPL on", () => {
  test.each(cases)("$id", ({books, garment, from, until, posterior, makers}) => {
    const {finding} = makeExaminer(books, {since: parseMonth(from)!, today: parseMonth(until)!}).examine(garment);
    allClose(finding!.posterior, posterior, asked);
    for (const {maker, probability} of finding!.makers) close(probability, makers[maker ?? "none"]!, asked);
  });
});
