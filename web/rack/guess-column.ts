// Guesses what a column of somebody's own table holds, from its name; the owner has the last word.
import type {EntryColumn} from "../../commands/rack/table/column.ts";

/** What each entry is called on screen. */
export const entryNames: Readonly<Record<EntryColumn, string>> = {
  garment: "number of the garment", title: "title", maker: "maker", market: "where it was sold", type: "kind of garment", rows: "rows of the label", note: "note",
  place: "where it is kept", standing: "standing", paid: "paid", asked: "asking", tags: "tags", size: "size on its tag", measures: "measures",
};

const words: readonly (readonly [EntryColumn, readonly string[]])[] = [
  ["garment", ["garment", "number", "no", "nr", "num", "id", "item", "piece", "ref", "reference", "code"]],
  ["title", ["title", "name", "description", "what"]],
  ["maker", ["maker", "brand", "make", "manufacturer"]],
  ["market", ["market", "country", "sold in"]],
  ["type", ["type", "kind", "category", "sort"]],
  ["rows", ["rows", "label rows", "numbers", "label numbers", "codes"]],
  ["note", ["note", "notes", "remark", "remarks", "comment", "comments"]],
  ["place", ["place", "kept", "location", "shelf", "where", "box", "bin"]],
  ["standing", ["standing", "status", "state"]],
  ["paid", ["paid", "cost", "bought for", "purchase price", "buying price"]],
  ["asked", ["asked", "asking", "price", "selling price", "asking price"]],
  ["tags", ["tags", "tag", "labels", "keywords"]],
  ["size", ["size", "tag size", "tagged"]],
  ["measures", ["measures", "measurements"]],
];

/**
 * Guesses for the columns that do not speak for themselves; no entry is guessed twice.
 * @param columns  as the server reads them: a target of null is one that it cannot name
 * @returns        names with their guess; "" leaves a column out
 */
export const guessColumns = (columns: readonly {readonly name: string; readonly target: string | null}[]): Record<string, string> => guessFrom(words, columns);

/** The same for any list of entries, each with the names that it goes by. */
export function guessFrom(words: readonly (readonly [entry: string, names: readonly string[]])[], columns: readonly {readonly name: string; readonly target: string | null}[]): Record<string, string> {
  const taken = new Set(columns.flatMap(({target}) => (target ? [target] : [])));
  const guesses: Record<string, string> = {};
  for (const {name, target} of columns) {
    if (target !== null) continue;
    const plain = name.toLowerCase().replace(/[^a-z]+/g, " ").trim();
    const free = words.filter(([entry]) => !taken.has(entry));
    const guess = (free.find(([, names]) => names.includes(plain)) ?? free.find(([, names]) => plain.split(" ").some((word) => names.includes(word))))?.[0] ?? "";
    if (guess) taken.add(guess);
    guesses[name] = guess;
  }
  return guesses;
}
