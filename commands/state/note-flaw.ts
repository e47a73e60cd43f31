// Reads a flaw as somebody says it: "heavy stain at the left thigh, mended".
import type {Answer} from "../command.ts";
import {nearest} from "../../engine/nearest.ts";
import {defaultRule} from "../../state/default-rule.ts";
import {flawSchema, severities, type Flaw} from "../../state/model.ts";
import type {GradeRule} from "../../state/rule.ts";
import {unknownFlaw} from "./problems.ts";

/**
 * A flaw from its words; plain where no severity is said, in front where no side is.
 * @example
 * noteFlaw("slight hole at the left knee").answer.place // -> "left knee"
 */
export function noteFlaw(words: string, rule: GradeRule = defaultRule): Answer<Flaw> {
  const [head, ...tail] = words.trim().toLowerCase().split(/\s*,\s*/);
  const [what = "", place = ""] = head!.split(/\s+at\s+(?:the\s+)?/);
  const severity = severities.find((one) => what.startsWith(`${one} `));
  const name = (severity ? what.slice(severity.length) : what).trim();
  const of = rule.flaws.find((one) => one.name.toLowerCase() === name || one.kind === name.replaceAll(" ", "-"));
  if (!of) return {problems: [unknownFlaw(`flaw “${words}”`, name, nearest(name, rule.flaws.map((one) => one.name)))]};
  const side = (["back", "inside"] as const).find((one) => tail.some((word) => word.replace(/^at the /, "") === one)) ?? (/\bback\b|seat/.test(place) ? "back" : "front");
  return {answer: flawSchema.parse({kind: of.kind, place: place.trim().slice(0, 200), side, severity: severity ?? "plain", mended: tail.includes("mended")})};
}
