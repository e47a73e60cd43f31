// A garment of two dates: what it was made to look like, and when it was made, each by month.
import {monthIndex, nameOf, verdictOf, type Brief, type Finding} from "../../engine/index.ts";

/** All that a ribbon draws. */
export type Months = Pick<Brief, "first" | "posterior" | "best">;

export const isOfTwoDates = (finding: Finding): boolean => verdictOf(finding).kind === "two dates";

/** Making and look by month; null for a garment of one date. */
export function twoRibbons(finding: Finding): {readonly made: Months; readonly look: Months} | null {
  if (!finding.twoDates || !isOfTwoDates(finding)) return null;
  return {made: monthsOf(finding.twoDates.made, finding), look: monthsOf(finding.twoDates.look, finding)};
}

function monthsOf(posterior: Float64Array, {first}: Finding): Months {
  const at = posterior.reduce((most, p, t) => (p > posterior[most]! ? t : most), 0);
  return {first, posterior, best: {month: monthIndex(first + at), probability: posterior[at]! as Brief["best"]["probability"]}};
}

/** Which side a mark takes in a garment of two dates; null for one of one date, or when it takes none. */
export function sideOf(finding: Finding, id: string): "look" | "substance" | null {
  return isOfTwoDates(finding) ? (finding.twoDates!.speaking.find((one) => one.id === id)?.side ?? null) : null;
}

/** The names of the marks on one side, those that speak loudest first. */
export function namesOn(finding: Finding, side: "look" | "substance", most = 3): readonly string[] {
  return (finding.twoDates?.speaking ?? []).filter((one) => one.side === side).slice(0, most).map(({id}) => nameOf(finding, id));
}
