// All that a paper on a garment is made from, gathered before anything is composed.
import type {Book} from "../../engine/index.ts";
import type {FindingJson} from "../../commands/finding-shape.ts";
import type {Owner} from "../../commands/rack/settings.ts";
import type {Graded} from "../../state/grade.ts";
import type {GradeRule} from "../../state/rule.ts";
import type {Content, Dating} from "../../store/model.ts";

export interface Material {
  readonly id: string;
  readonly content: Content;
  readonly finding: FindingJson;
  /** As it is kept, or worked out anew where that is not what the finding says. */
  readonly dating: Dating;
  readonly books: readonly Book[];
  readonly owner: Owner;
  readonly rule: GradeRule;
  /** Null: nobody looked at its state. */
  readonly graded: Graded | null;
  /** Day of the paper, 2026-11-25. */
  readonly on: string;
  /** What it may be worth, in words; null unless the owner asked for it. */
  readonly worth: string | null;
}
