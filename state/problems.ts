// The wordings of what can be wrong with measures, to be read in a row.
import type {Problem} from "../engine/problem.ts";

export const notLength = (at: string, typed: string): Problem => ({
  code: "state/not-a-length", at, what: `“${typed}” is no length`, why: "it is kept as typed, but nothing can be worked out from it", fix: "write it as on the tape: 31 1/2, 16.25, 81 cm",
});

/** @param hints  what may have been meant */
export const unusual = (at: string, said: string, low: string, high: string, hints: readonly string[]): Problem => ({
  code: "state/unusual", at, what: `${said} is far from the usual`, why: `on grown-ups' garments it mostly lies between ${low} and ${high}`,
  fix: hints.length > 0 ? `${hints.join("; ")}; or lay the tape once more` : "lay the tape once more; leave it when it is so, as on children's and very wide garments",
});

export const twicePoint = (at: string): Problem => ({
  code: "state/twice", at, what: "it is measured twice", why: "only the first one counts", fix: "take one of them out",
});

export const strangePoint = (at: string, kind: string, known: readonly string[]): Problem => ({
  code: "state/strange-point", at, what: `this is no point of measure of ${kind}`, why: "it stays in the record, but is neither drawn nor checked", fix: `choose the garment's type, or one of: ${known.join(", ")}`,
});

export const apart = (at: string, found: string, says: string, off: string): Problem => ({
  code: "state/apart", at, what: `${found} do not go together, by ${off}`, why: `mostly ${says}`, fix: "lay the tape once more at these points; if it is so, it may have been altered: note that",
});

/** @param body  the chest girth from which the size is for, and who says so */
export const belowTag = (at: string, said: string, size: string, body: string): Problem => ({
  code: "state/below-tag", at, what: `${said} all round is less than the body that the size ${size} is for`, why: `a garment is wider than its wearer, and ${size} is for a chest from ${body}`, fix: "look at the tag and the tape once more; if both are right, it shrank or the tag is another garment's",
});

export const notBody = (at: string, known: readonly string[]): Problem => ({
  code: "state/not-a-body-measure", at, what: "this is no measure of a body that the fit knows", why: "nothing can be compared with it", fix: `use one of: ${known.join(", ")}`,
});

export const nothingMeasured = (at: string): Problem => ({
  code: "state/nothing-measured", at, what: "nothing is measured on this garment", why: "there is nothing to compare a body with", fix: "measure it first, on its screen or with ticking sizes --set",
});
