// Compares a garment with the measures of a body.
import {z} from "zod";
import {bodyAsked, fitOf, type Body, type Fit} from "../../state/fit.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {readLength} from "../../state/length.ts";
import {typedLengthSchema} from "../../state/model.ts";
import {notBody, notLength, nothingMeasured} from "../../state/problems.ts";
import {command} from "../command.ts";
import {measuredSubject} from "./subject.ts";

export const fitGarment = command({
  name: "garment.fit",
  summary: "say whether a garment would fit a body, point by point",
  input: z.strictObject({of: measuredSubject, body: z.record(z.string().max(60), typedLengthSchema).describe("measures of the body, like waist=34 or inside-leg=81cm")}),
  run: ({of: {name, type, sizes}, body}) => {
    const kind = kindOf(type);
    const asked = bodyAsked(kind);
    const problems = Object.entries(body).flatMap(([measure, length]) => [
      ...((asked as readonly string[]).includes(measure) ? [] : [notBody(`body ${measure}`, asked)]),
      ...(readLength(length) ? [] : [notLength(`body ${measure}`, length.typed)]),
    ]);
    if (!sizes || sizes.measures.length === 0) problems.push(nothingMeasured(name));
    return problems.length > 0 ? {problems} : {answer: fitOf(kind, sizes!, body as Body)};
  },
  json: (fit: Fit) => fit,
});
