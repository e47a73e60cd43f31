// What a rule's `when` is tested against: known, or one value of a hidden circumstance.
import type {When} from "./schema.ts";

export const circumstanceNames = ["market", "type", "plant", "lot", "label"] as const;
export type CircumstanceName = (typeof circumstanceNames)[number];

/** "any other": a value that no rule in question names. */
export const anyOther = "\u0000other";

/** One case: a value for each circumstance that matters; those left out hold for every value. */
export type Case = Readonly<Partial<Record<CircumstanceName, string>>>;

export const asList = (value: string | readonly string[] | undefined): readonly string[] =>
  value === undefined ? [] : typeof value === "string" ? [value] : value;

/** Whether a rule holds in a case. A circumstance that the case does not name was told apart by no rule, so it cannot be asked for. */
export function holds(when: When | undefined, in_: Case): boolean {
  if (!when) return true;
  return circumstanceNames.every((name) => {
    const wanted = asList(when[name]);
    return wanted.length === 0 || wanted.includes(in_[name] ?? anyOther);
  });
}

/** Collects the values that rules tell apart. */
export class Distinctions {
  private readonly named = new Map<CircumstanceName, Set<string>>();

  note(when: When | undefined): void {
    if (!when) return;
    for (const name of circumstanceNames) {
      for (const value of asList(when[name])) {
        let values = this.named.get(name);
        if (!values) this.named.set(name, (values = new Set()));
        values.add(value);
      }
    }
  }

  /** Notes everything that another has noted. */
  join(other: Distinctions): void {
    for (const [name, values] of other.named) {
      const mine = this.named.get(name);
      if (mine) for (const value of values) mine.add(value);
      else this.named.set(name, new Set(values));
    }
  }

  names(): readonly CircumstanceName[] {
    return circumstanceNames.filter((name) => this.named.has(name));
  }

  values(name: CircumstanceName): readonly string[] {
    return [...(this.named.get(name) ?? [])].sort();
  }
}

const keys = new WeakMap<Case, string>();

/** A text that tells cases apart. */
export function caseKey(in_: Case): string {
  let key = keys.get(in_);
  if (key === undefined) keys.set(in_, (key = circumstanceNames.map((name) => in_[name] ?? "").join("|")));
  return key;
}
