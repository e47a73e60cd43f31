// The likeliest texts of a row under one line of a layout: fields laid over its places one after another, the best few kept at each step.
import type {PlaceCosts} from "./place-costs.ts";
import type {TextSpan} from "./spans.ts";

/** One step of a line: a field with where its texts could stand, or what stands between two fields. */
export type Step = {readonly spans: readonly (readonly TextSpan[])[]} | {readonly between: "" | " " | "-" | "." | "/"};

export interface LineText {
  readonly text: string;
  readonly cost: number;
}

/** So many beginnings of a row are kept for each place. Source: own choice. */
const mostKept = 12;

/**
 * Texts for the whole row, likeliest first.
 * @cost steps × places × kept × spans
 */
export function lineTexts(steps: readonly Step[], places: PlaceCosts, most: number): LineText[] {
  const count = places.characters.length;
  let open: LineText[][] = Array.from({length: count + 1}, () => []);
  open[0]!.push({text: "", cost: 0});
  for (const step of steps) {
    const next: LineText[][] = Array.from({length: count + 1}, () => []);
    for (let from = 0; from <= count; from++) {
      for (const {text, cost} of open[from]!) {
        const ways = "spans" in step ? step.spans[from]! : betweens(step.between, from, places);
        for (const way of ways) next[way.until]!.push({text: text + way.text, cost: cost + way.cost});
      }
    }
    open = next.map((list) => kept(list, mostKept));
  }
  // A place or two at the end may be dirt.
  const ends = open.flatMap((list, until) => {
    let rest = 0;
    for (let place = until; place < count; place++) rest += places.drop(place);
    return until >= count - 2 ? list.map(({text, cost}) => ({text: text.trim().replace(/ {2,}/g, " "), cost: cost + rest})) : [];
  });
  return kept(ends, most);
}

function kept(list: readonly LineText[], most: number): LineText[] {
  const cheapest = new Map<string, number>();
  for (const {text, cost} of list) if (cost < (cheapest.get(text) ?? Infinity)) cheapest.set(text, cost);
  return [...cheapest].map(([text, cost]) => ({text, cost})).sort((a, b) => a.cost - b.cost || (a.text < b.text ? -1 : 1)).slice(0, most);
}

const signs = ["", " ", "-", ".", "/"] as const;

/** The listed sign, a gap or nothing, taken from a place or made up: gaps and signs are both lost easily. */
function betweens(listed: (typeof signs)[number], from: number, places: PlaceCosts): TextSpan[] {
  const law = (sign: string) => (listed === "" ? (sign === "" ? 0.1 : sign === " " ? 2.7 : 4.6) : sign === listed ? 0.16 : sign === "" ? 2.3 : 4);
  const at = places.characters[from];
  const possible = signs.filter((sign) => sign === "" || sign === " " || sign === listed || sign === at);
  return possible.flatMap((sign): TextSpan[] => {
    if (sign === "") return [{until: from, text: "", cost: law("")}, ...(at === " " || at === "-" || at === "." || at === "/" ? [{until: from + 1, text: "", cost: law("") + places.drop(from)}] : [])];
    const taken: TextSpan[] = at === undefined ? [] : [{until: from + 1, text: sign, cost: law(sign) + places.take(from, sign)}];
    // "3 -0318" is a dash with gaps around it.
    if (sign !== " " && at === " " && places.characters[from + 1] === sign) taken.push({until: from + 2 + Number(places.characters[from + 2] === " "), text: sign, cost: law(sign) + places.take(from + 1, sign)});
    return [{until: from, text: sign, cost: law(sign) + (sign === " " ? places.add(" ") : 1 + places.add(sign))}, ...taken];
  });
}
