// The measures of a garment as a cell of a table: "waist=17 in|inseam=31 1/2 in", read back as typed.
import {kindOf} from "../../state/garment-kind.ts";
import {readLength} from "../../state/length.ts";
import type {Measure, Sizes, TypedLength} from "../../state/model.ts";
import {pointsOf} from "../../state/point.ts";
import {notLength} from "../../state/problems.ts";
import type {Answer} from "../command.ts";
import {unknownPoint} from "./problems.ts";

/** Lengths that cannot be read stay behind: a table holds what can be worked with. */
export const printMeasures = ({measures}: Pick<Sizes, "measures">): string => measures.flatMap(({point, length}) => (readLength(length) ? [`${point}=${bare(length.typed)} ${readLength(length)!.unit}`] : [])).join("|");

/** Without its unit. */
const bare = (typed: string) => typed.trim().replace(/\s*(?:inches|inch|in|cm|"|″|”)\.?$/i, "");

/**
 * Reads such a cell; a length without a unit is in inches.
 * @returns every slip, at `at`
 */
export function readMeasures(cell: string, type: string | undefined, at: string): Answer<Measure[]> {
  const known = pointsOf(kindOf(type)).map(({id}) => id);
  const read = cell.split("|").filter((piece) => piece.trim() !== "").map((piece) => {
    const [point = "", typed = ""] = piece.split("=").map((part) => part.trim());
    const length: TypedLength = {typed: bare(typed), unit: /cm\.?$/i.test(typed) ? "cm" : "in"};
    if (!known.includes(point)) return {problem: unknownPoint(at, piece.trim(), known)};
    return readLength(length) ? {measure: {point, length}} : {problem: notLength(`${at} ${point}`, typed)};
  });
  const problems = read.flatMap(({problem}) => problem ?? []);
  return problems.length > 0 ? {problems} : {answer: read.flatMap(({measure}) => measure ?? [])};
}
