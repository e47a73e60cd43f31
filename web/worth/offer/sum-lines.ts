// The lines of an offer's sum, such that whoever adds them up arrives at the most to pay.
import type {Offer} from "../../../worth/answer.ts";
import {capital} from "../say.ts";

type Line = Offer["lines"][number];

/** What the rounding keeps back has a line of its own, and so has what is missing when even a gift would cost too much. */
export function sumLines({lines, most}: Pick<Offer, "lines" | "most">): readonly Line[] {
  const named = lines.map(({what, cents}, i) => ({what: i === 0 ? capital(what) : cents < 0 ? `less ${what}` : what, cents}));
  const rest = most - lines.reduce((sum, {cents}) => sum + cents, 0);
  if (rest === 0) return named;
  return [...named, {what: rest < 0 ? "less what rounding keeps back" : "what is missing even for a gift", cents: rest}];
}
