// What a factor of a case is, and the scopes in which factors are asked for.
import type {Ties} from "./repeats.ts";

/** A vector over months that multiplies the others, and the marks that it is made of. */
export interface Factor {
  /** Set when this is the label with all that hangs on it. */
  readonly hub: Hub | null;
  readonly ids: readonly string[];
  readonly pieces: readonly string[];
  readonly vector: Float64Array;
  /** What the marks say by month when their piece belongs; for the hub the vector itself. */
  readonly own: Float64Array;
}

/** Which marks take part, and, to ask what a stray piece would mean, a piece fixed as stray or not. */
export interface Scope {
  keep(id: string): boolean;
  readonly fixed?: {readonly piece: string; readonly stray: boolean};
  /** Only the part in which the label kind was misjudged. */
  readonly misjudged?: boolean;
}

export const everything: Scope = {keep: () => true};

/**
 * One way in which the hub's pieces belong or are stray. The label's rows enter tied to the repeats that belong,
 * and, were the label itself stray, averaged over the months.
 */
export interface HubTerm {
  readonly ties: Ties;
  /** Chance by month of the other marks on the hub's pieces, all stray rates included, the label belonging. */
  readonly own: Float64Array;
  /** Chance by month with the label stray; multiplies the average of label and marks on it. */
  readonly stray: Float64Array;
}

export interface Hub {
  readonly terms: readonly HubTerm[];
  /** Marks on the label's piece beside label kind and rows. */
  readonly onLabel: Float64Array;
  readonly withLabel: boolean;
  readonly untied: Ties;
}
