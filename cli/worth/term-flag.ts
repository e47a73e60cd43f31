// Terms given on the command line: margin=0.4, currency=EUR.
import {otherTermsSchema} from "../../commands/worth/terms-in-use.ts";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import type {Terms} from "../../worth/model.ts";
import {NeedsMending} from "../ending.ts";
import * as say from "./problems.ts";

const names = Object.keys(otherTermsSchema.shape);

/** @throws NeedsMending with everything that is no term, or no value for one */
export function termsGiven(given: readonly string[]): Partial<Terms> {
  const pairs = given.map((one) => [one.slice(0, one.indexOf("=")).trim(), one.slice(one.indexOf("=") + 1).trim(), one] as const);
  const strange = pairs.filter(([name]) => !names.includes(name));
  if (strange.length > 0) throw new NeedsMending(strange.map(([, , one]) => say.notTerm(one, names)));
  const value = (name: string, text: string) => (name === "currency" ? text.toUpperCase() : /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text);
  const {fits, problems} = checkShape(otherTermsSchema, Object.fromEntries(pairs.map(([name, text]) => [name, value(name, text)])), (path) => printPath(path));
  if (problems) throw new NeedsMending(problems);
  return Object.fromEntries(Object.entries(fits).filter(([, held]) => held !== undefined)) as Partial<Terms>;
}
