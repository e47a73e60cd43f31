// The wordings of what can be wrong with a wish about states and measures, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const notLookedAt = (at: string): Problem => ({
  code: "state/not-looked-at", at, what: "nobody noted its state yet", why: "a grade follows from flaws, wear and cleanliness as somebody saw them", fix: "note its state on its screen: flaws, wear, cleanliness",
});
