// Where in a row each text of a field could stand, and at what cost.
import type {FieldPrint, FieldText} from "./field-texts.ts";
import type {PlaceCosts} from "./place-costs.ts";

/** A text over some places of a row; `until` not included. */
export interface TextSpan {
  readonly until: number;
  readonly text: string;
  readonly cost: number;
}

/** A text that fits a stretch worse than this beyond its best rival is no candidate. Source: own choice; e to the 11th is some 60,000. */
const mostCost = 11;
/** So many texts a stretch. Source: own choice. */
const mostTexts = 10;

/** For each place at which a field could begin: the texts that could stand there, with where they end. */
export function spansOf(print: FieldPrint, places: PlaceCosts): readonly (readonly TextSpan[])[] {
  // Texts in order share their beginnings, which are then laid over the places once.
  const texts = [...print.texts].sort((a, b) => (a.text < b.text ? -1 : a.text > b.text ? 1 : 0));
  return Array.from({length: places.characters.length + 1}, (_, from) => {
    const byEnd = new Map<number, TextSpan[]>();
    const put = (span: TextSpan) => byEnd.get(span.until)?.push(span) ?? byEnd.set(span.until, [span]);
    fitAll(texts, from, places, put);
    if (print.figures) figures(print.figures, from, places, put);
    return [...byEnd.values()].flatMap((spans) => best(spans, mostTexts));
  });
}

const best = (spans: readonly TextSpan[], most: number) => [...spans].sort((a, b) => a.cost - b.cost).slice(0, most);

/** Lays texts over the places from `from` on: characters may be other ones, missed or made up. */
function fitAll(texts: readonly FieldText[], from: number, places: PlaceCosts, put: (span: TextSpan) => void): void {
  const room = Math.min(places.characters.length - from, Math.max(0, ...texts.map(({text}) => text.length)) + 2);
  const start = [0];
  for (let j = 1; j <= room; j++) start.push(start[j - 1]! + places.drop(from + j - 1));
  // rows[i]: costs with the first i characters of the text before laid down; null where they cannot be any more.
  const rows: (readonly number[] | null)[] = [start];
  let before = "";
  for (const {text, cost: prior} of texts) {
    let shared = 0;
    while (shared < before.length && shared < text.length && before[shared] === text[shared]) shared++;
    for (let i = shared; i < text.length; i++) rows[i + 1] = rows[i] ? laid(rows[i]!, text[i]!, from, places) : null;
    before = text;
    const costs = rows[text.length];
    if (costs) for (let j = 1; j <= room; j++) if (costs[j]! <= mostCost) put({until: from + j, text, cost: costs[j]! + prior});
  }
}

/** One more character laid down; null when every way costs too much. */
function laid(row: readonly number[], character: string, from: number, places: PlaceCosts): number[] | null {
  const added = places.add(character);
  const next = [row[0]! + added];
  let least = next[0]!;
  for (let j = 1; j < row.length; j++) {
    const place = from + j - 1;
    const cost = Math.min(row[j - 1]! + places.take(place, character), row[j]! + added, next[j - 1]! + places.drop(place));
    next.push(cost);
    if (cost < least) least = cost;
  }
  return least > mostCost ? null : next;
}

/** Figures as the places show them: the likeliest ones, and the same with one of them its runner-up. */
function figures({from: least, until: most, cost}: {readonly from: number; readonly until: number; readonly cost: number}, from: number, places: PlaceCosts, put: (span: TextSpan) => void): void {
  const ranked = Array.from({length: Math.min(most, places.characters.length - from)}, (_, i) =>
    [..."0123456789"].map((figure) => ({figure, cost: places.take(from + i, figure)})).sort((a, b) => a.cost - b.cost));
  for (let width = least; width <= ranked.length; width++) {
    const chosen = ranked.slice(0, width);
    const text = chosen.map(([first]) => first!.figure).join("");
    const sum = chosen.reduce((total, [first]) => total + first!.cost, cost * width);
    if (sum - cost * width > mostCost) return;
    put({until: from + width, text, cost: sum});
    chosen.forEach(([first, second], i) => {
      const dearer = second!.cost - first!.cost;
      if (dearer < 3) put({until: from + width, text: text.slice(0, i) + second!.figure + text.slice(i + 1), cost: sum + dearer});
    });
  }
}

/** So many figures, or none at all. */
export function maybeFigures(width: number, share: number, places: PlaceCosts): readonly (readonly TextSpan[])[] {
  const there = spansOf({texts: [], figures: {from: width, until: width, cost: Math.log(10)}}, places);
  return there.map((spans, from) => [{until: from, text: "", cost: -Math.log(1 - share)}, ...spans.map((span) => ({...span, cost: span.cost - Math.log(share)}))]);
}

/** Places as they were read, left alone: what stands beside a field in a row of unknown layout. */
export function leftAlone(places: PlaceCosts): readonly (readonly TextSpan[])[] {
  const {characters} = places;
  return Array.from({length: characters.length + 1}, (_, from) => {
    const spans: TextSpan[] = [{until: from, text: "", cost: 0}];
    let cost = 0;
    for (let until = from + 1; until <= characters.length; until++) {
      cost += places.take(until - 1, characters[until - 1]!) + (characters[until - 1] === " " ? 0 : Math.log(12));
      spans.push({until, text: characters.slice(from, until).join(""), cost});
    }
    return spans;
  });
}
