// A garment as the arithmetic of prices takes it.
import type {Content} from "../../store/model.ts";
import {gradeOf} from "../../state/grade.ts";
import type {GradeRule} from "../../state/rule.ts";
import type {Subject} from "../../worth/index.ts";
import type {DateOdds} from "./date-odds.ts";

/**
 * @param odds  null: what is kept of the dating has to do, or nothing is known
 * @param id    null: not on the rack
 */
export function subjectOf({garment, dating, sizes, state}: Content, odds: DateOdds | null, id: string | null, rule: GradeRule | undefined): Subject {
  return {
    garment: id,
    kind: garment.type ?? "",
    makers: odds?.makers ?? (dating ? [{maker: dating.maker, probability: 1}] : typeof garment.maker === "string" ? [{maker: garment.maker, probability: 1}] : []),
    lot: odds?.lot ?? null,
    years: odds?.years ?? dating?.years ?? null,
    size: sizes?.tag?.text ?? "",
    grade: state ? gradeOf(state, rule).grade : null,
  };
}
