// The wordings of what can be wrong with a wish about states and measures, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const notLookedAt = (at: string): Problem => ({
  code: "state/not-looked-at", at, what: "nobody noted its state yet", why: "a grade follows from flaws, wear and cleanliness as somebody saw them", fix: "note its state on its screen: flaws, wear, cleanliness",
});

export const unknownFlaw = (at: string, name: string, near: string | null): Problem => ({
  code: "state/unknown-flaw", at, what: `the rule names no flaw “${name}”`, why: "nobody could say what it costs", fix: `${near ? `did you mean ${near}? ` : ""}Say it as the rule does, like slight hole at the left knee; ticking grade --print-rule lists the kinds`,
});

export const unknownPoint = (at: string, given: string, known: readonly string[]): Problem => ({
  code: "state/unknown-point", at, what: `“${given}” says no point of measure and its length`, why: "nothing can be laid there", fix: `write a point, =, and the length, like inseam=31 1/2; the points are ${known.join(", ")}`,
});

export const noMeasuredInFile = (at: string, reason: string): Problem => ({
  code: "state/no-garment-in-file", at, what: `no garment with sizes and state can be read here (${reason})`, why: "there is nothing to measure or grade", fix: "give a file as ticking rack export writes it (json or jsonl), or the number of a garment on the rack",
});

export const manyGarments = (at: string): Problem => ({
  code: "state/many-garments", at, what: "several garments are named", why: "what is noted belongs to one of them", fix: "name one garment",
});

export const notOnRack = (at: string): Problem => ({
  code: "state/not-on-rack", at, what: "this garment is in a file", why: "what is noted is kept on the rack", fix: "name a garment on the rack, or leave the notes out",
});
