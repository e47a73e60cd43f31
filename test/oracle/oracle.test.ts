// The engine against a second program: 116 small garments, every answer to nine figures.
// Oracle: test/oracle/enumerate.py, written from docs/model.md alone, exact fractions; answers.json records its version and date.
import {readFileSync} from "node:fs";
import {describe, expect, test} from "vitest";
import {makeExaminer, parseMonth, printMonth, type Finding} from "../../engine/index.ts";
import {garmentSchema} from "../../engine/rule/garment.ts";
import {bookSchema} from "../../engine/rule/schema.ts";
import {allClose, close} from "../helper/close.ts";

type Numbers = Readonly<Record<string, number>>;

interface Case {
  readonly id: string;
  readonly tests: string;
  readonly axis: {readonly from: string; readonly until: string};
  readonly books: readonly unknown[];
  readonly garment: unknown;
  readonly prior?: readonly number[];
}

interface Answer {
  readonly id: string;
  readonly posterior: readonly number[];
  readonly makers?: Numbers;
  readonly stray: Numbers;
  readonly "stray by pattern": Numbers;
  readonly "stray pieces": Numbers;
  readonly sets: Readonly<Record<string, {readonly months: readonly string[]; readonly mass: number; readonly tie: boolean}>>;
  readonly bounds: {readonly "no earlier than": string; readonly "no later than": string};
  readonly "two dates"?: number;
  readonly next?: Numbers;
}

const read = <T>(name: string): T => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8")) as T;
const {cases} = read<{cases: readonly Case[]}>("cases.json");
const answers = new Map(read<{answers: readonly Answer[]}>("answers.json").answers.map((answer) => [answer.id, answer]));
/** Answers in which engine and page are known to differ, with the reason; one that starts to agree must leave the list. */
const knownWrong = read<{differ: Readonly<Record<string, string>>}>("known-wrong.json").differ;

const nine = {abs: 1e-9, because: "probabilities sum to 1; the oracle rounds once, the engine some thousand times"} as const;

function findingOf({axis, books, garment, prior}: Case): Finding {
  const options = {since: parseMonth(axis.from)!, today: parseMonth(axis.until)!, prior: prior && Float64Array.from(prior)};
  const {finding, problems} = makeExaminer(books.map((book) => bookSchema.parse(book)), options).examine(garmentSchema.parse(garment));
  if (!finding) throw new Error(problems.map(({what}) => what).join("; "));
  return finding;
}

function closeByName(actual: ReadonlyMap<string, number>, expected: Numbers): void {
  for (const [id, value] of Object.entries(expected)) {
    if (!actual.has(id)) throw new Error(`${id} is missing`);
    close(actual.get(id)!, value, nine);
  }
}

/** What is compared, one test each, so that a known difference names exactly what differs. */
const parts: Readonly<Record<string, (finding: Finding, answer: Answer, one: Case) => void>> = {
  posterior: (finding, {posterior}) => allClose(finding.posterior, posterior, nine),
  makers: (finding, {makers}) => closeByName(new Map(finding.makers.map(({maker, probability}) => [maker!, probability])), makers ?? {}),
  sets: (finding, {sets}) =>
    [50, 90, 95].forEach((share, i) => {
      const set = finding.sets[i]!;
      const {months, mass, tie} = sets[share]!;
      close(set.mass, mass, nine);
      if (!tie) expect(set.runs.flatMap(({from, until}) => monthsOf(from, until))).toEqual(months);
    }),
  bounds: (finding, {bounds}) =>
    expect([printMonth(finding.noEarlier), printMonth(finding.noLater)]).toEqual([bounds["no earlier than"], bounds["no later than"]]),
  strays(finding, answer, {garment}) {
    // Counted over all patterns of strays where there are patterns; a tempered mark has the formula alone.
    const said = {...answer.stray, ...answer["stray by pattern"]};
    // The label stands for its kind; without a kind seen the ledger has the rows alone, whose doubt is in their readings.
    if (!("label" in (garment as {saw: object}).saw)) delete said.label;
    closeByName(new Map(finding.ledger.map(({id, stray}) => [id, stray ?? Number.NaN])), said);
  },
  pieces: (finding, answer) => closeByName(new Map(finding.pieces.map(({id, stray}) => [id, stray])), answer["stray pieces"]),
  "two dates"(finding, answer) {
    if (answer["two dates"] !== undefined) close(finding.twoDates?.probability ?? Number.NaN, answer["two dates"], nine);
  },
  next: (finding, {next}) => closeByName(new Map(finding.next.map(({id, bits}) => [id, bits])), next ?? {}),
};

function monthsOf(from: number, until: number): string[] {
  return Array.from({length: until - from + 1}, (_, i) => printMonth((from + i) as Parameters<typeof printMonth>[0]));
}

for (const one of cases) {
  describe(`${one.id}: ${one.tests}`, () => {
    const answer = answers.get(one.id)!;
    let finding: Finding | undefined;
    for (const [part, compare] of Object.entries(parts)) {
      const known = knownWrong[`${one.id} ${part}`];
      (known ? test.fails : test)(known ? `${part} (known to differ: ${known})` : part, () => compare((finding ??= findingOf(one)), answer, one));
    }
  });
}

test("every known difference names a case and a part", () => {
  const all = new Set(cases.flatMap(({id}) => Object.keys(parts).map((part) => `${id} ${part}`)));
  expect(Object.keys(knownWrong).filter((name) => !all.has(name))).toEqual([]);
});
