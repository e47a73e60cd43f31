// What changed from one step of a garment's history to the next, each change a sentence.
import {writtenRow, type RowText} from "../../engine/index.ts";
import type {Content} from "../../store/model.ts";
import {same} from "../offline/merge.ts";
import {sayStateChanges} from "../state/say-changes.ts";
import {sayMoney} from "./say.ts";

const entries = {title: "title", maker: "maker", market: "market", type: "kind", note: "note", garment: "number"} as const;

/**
 * @param before    the step before; null for the first one
 * @param markName  what a mark is called
 * @returns         nothing when only the date was worked out anew and stayed the same
 */
export function sayChanges(before: Content | null, after: Content, markName: (id: string) => string): string[] {
  if (!before) {
    const marks = Object.keys(after.garment.saw).length;
    return marks === 0 ? [] : [marks === 1 ? "one mark noted" : `${marks} marks noted`];
  }
  const said: string[] = [];
  const tell = (name: string, was: string, is: string) => {
    if (was !== is) said.push(was === "" ? `${name}: ${is}` : is === "" ? `${name} taken away, was ${was}` : `${name}: ${was} → ${is}`);
  };
  for (const [key, name] of Object.entries(entries) as [keyof typeof entries, string][]) tell(name, plain(before.garment[key]), plain(after.garment[key]));
  const marks = new Set([...Object.keys(before.garment.saw), ...Object.keys(after.garment.saw)]);
  for (const id of marks) if (!same(before.garment.saw[id], after.garment.saw[id])) tell(markName(id), plain(before.garment.saw[id]), plain(after.garment.saw[id]));
  tell("kept", before.place, after.place);
  tell("standing", before.standing, after.standing);
  tell("paid", sayMoney(before.paid), sayMoney(after.paid));
  tell("asking", sayMoney(before.asked), sayMoney(after.asked));
  said.push(...comeAndGone(before.tags, after.tags).map(([tag, came]) => `tag ${tag} ${came ? "put on" : "taken off"}`));
  const photos = comeAndGone(before.photos.map(({photo}) => photo), after.photos.map(({photo}) => photo));
  for (const came of [true, false]) {
    const count = photos.filter(([, one]) => one === came).length;
    if (count > 0) said.push(`${count === 1 ? "a photo" : `${count} photos`} ${came ? "added" : "taken away"}`);
  }
  if (photos.length === 0 && !same(before.photos, after.photos)) said.push("captions or places of photos changed");
  said.push(...comeAndGone(before.labels.map(({photo}) => photo), after.labels.map(({photo}) => photo)).map(([, came]) => (came ? "a label read from a photo" : "what was read from a photo taken away")));
  said.push(...sayStateChanges(before, after));
  tell("dated", before.dating?.words ?? "", after.dating?.words ?? "");
  return said;
}

function comeAndGone(before: readonly string[], after: readonly string[]): [string, boolean][] {
  return [...after.filter((one) => !before.includes(one)).map((one): [string, boolean] => [one, true]), ...before.filter((one) => !after.includes(one)).map((one): [string, boolean] => [one, false])];
}

/** A value as it was written down, short enough for a line. */
function plain(value: unknown): string {
  const text = sayValue(value);
  return text.length > 90 ? `${text.slice(0, 88)}…` : text;
}

function sayValue(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (Array.isArray(value)) return value.map(sayValue).join(" | ");
  if (typeof value !== "object") return String(value);
  if ("either" in value) return Object.entries(value.either as Record<string, number>).map(([one, weight]) => `${one} (${weight})`).join(" or ");
  if ("readings" in value) return writtenRow(value as RowText).text;
  if ("cells" in value) return (value.cells as unknown[]).map(sayValue).join("");
  return "text" in value ? String(value.text) : JSON.stringify(value);
}
