// On whose authority a rule speaks, and how that is known.
import {parseMonth, sayMonth, type Cite, type Source} from "../../engine/index.ts";

const hows: Readonly<Record<Cite["how"], string>> = {read: "read in the source", part: "partly read", memory: "from memory", inferred: "own judgement"};

/** Title of the source and how it is known. */
export function sayAuthority(source: Source | null | undefined, {how}: Cite): string {
  if (!source) return `no source named [${hows[how]}]`;
  if (source.kind === "common practice") return `${source.title.replace(/^common practice, no source: /i, "")} [common practice, no source]`;
  return `${source.title} [${hows[how]}]`;
}

/** A window in words, with "Mar 1968" for every "1968-03". */
export function sayWindowIn(text: string): string {
  return text.replace(", still in use", " on").replace(/\d{4}-(0[1-9]|1[0-2])/g, (month) => sayMonth(parseMonth(month)!).replace(/^(\w{3})\w*/, "$1"));
}
