// The rules that took part in a finding, each with what it says and on whose authority.
import type {Evaluation} from "../infer/evaluate.ts";
import type {RuleUsed} from "../infer/finding.ts";
import type {Observation} from "../mark/observation.ts";
import type {ReadyMark} from "../mark/ready-mark.ts";
import type {Book, WindowText} from "../rule/schema.ts";

/** Lists the rules behind what was seen, for one possible maker. */
export function rulesUsed({evidence}: Evaluation): RuleUsed[] {
  const books = new Map(evidence.view.books.map(({book}) => [book.book, book]));
  const label = evidence.view.own?.label;
  const seen: {mark: ReadyMark; seen: Observation}[] = [
    ...(label && evidence.label ? [{mark: label.mark, seen: evidence.label}] : []),
    ...evidence.marks,
    ...evidence.repeats.map(({mark, texts}) => ({mark, seen: {kind: "repeat" as const, texts}})),
  ];
  return seen.flatMap(({mark, seen: what}) => rulesOf(mark, what, books.get(mark.book)!));
}

function rulesOf({id, mark}: ReadyMark, seen: Observation, book: Book): RuleUsed[] {
  const base = {mark: id, book: book.book, edition: book.edition};
  const rule = (name: string, what: string, says: string | undefined, cite: RuleUsed["cite"], window: WindowText | null, caution: string | undefined): RuleUsed => ({
    ...base,
    name,
    seen: what,
    says: says ?? null,
    cite,
    source: book.sources[cite.ref] ?? null,
    window: window && sayWindow(window),
    caution: caution ?? null,
  });
  const values = mark.kind === "choice" ? mark.values : {};
  if (seen.kind === "choice") {
    return seen.values.map(([value]) => {
      const listed = values[value];
      return rule(mark.name, listed?.name ?? value, listed?.says ?? mark.says, listed?.source ?? mark.source, listed?.window ?? null, listed?.caution ?? mark.caution);
    });
  }
  const window = "window" in mark ? mark.window : null;
  return [rule(mark.name, sayObservation(seen), mark.says, mark.source, window, mark.caution)];
}

function sayObservation(seen: Observation): string {
  switch (seen.kind) {
    case "presence":
      return seen.present ? "present" : "absent";
    case "serial":
      return String(seen.number);
    case "coded":
    case "repeat":
      return seen.texts.map(({row}) => row.text).join(" or ");
    default:
      return "none";
  }
}

/** A window in words: "1968-03/09 to 1977-01/1978-06". */
export function sayWindow({begins, ends}: WindowText): string {
  const say = (pair: readonly [string, string]) => (pair[0] === pair[1] ? pair[0] : `${pair[0]}…${pair[1]}`);
  if (!begins && !ends) return "at any time";
  return `${begins ? `from ${say(begins)}` : ""}${begins && ends ? " " : ""}${ends ? `to ${say(ends)}` : begins ? ", still in use" : ""}`;
}

