// What this device keeps until the server has it: shapes only, shared by drafts and by changes that wait.
import type {Problem} from "../../engine/problem.ts";
import type {Content, GarmentRecord} from "../../store/model.ts";

/** What was typed and not yet saved. */
export interface Draft {
  /** Id of the garment on the rack, or a name of this device's own (`newDraftName`) for one that is not there yet. */
  readonly garment: string;
  /** The revision it was typed on top of; 0 for a new garment. */
  readonly base: number;
  /** What stood there then, for merging; null for a new garment. */
  readonly was: Content | null;
  readonly content: Content;
  /** UTC */
  readonly at: string;
}

/** A name for a garment that the rack does not know yet. */
export const newDraftName = (): string => `new-${Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, "0")).join("")}`;

/** Whether a name is one that `newDraftName` made. */
export const isDraftName = (garment: string): boolean => garment.startsWith("new-");

/** A change of one garment, to be saved. */
export interface GarmentChange {
  /** Id of the garment on the rack, or the name that `newDraftName` made. */
  readonly garment: string;
  /** The revision it was made from; 0 for a new garment. */
  readonly base: number;
  /** What stood at that revision; null for a new garment. */
  readonly was: Content | null;
  readonly content: Content;
  /** "added", "changed" ... for the history. */
  readonly what: string;
}

/** A change that waits on this device. */
export interface Waiting extends GarmentChange {
  readonly key: number;
  /** UTC, when it was made. */
  readonly at: string;
  /** The window it was last changed in. */
  readonly by: string;
  /** It was sent once and no answer came, so it may be there already. */
  readonly unanswered: boolean;
  /** Why it cannot be sent as it is; its owner decides. */
  readonly trouble: {readonly conflict: Conflict; readonly problems?: undefined} | {readonly problems: readonly Problem[]; readonly conflict?: undefined} | null;
}

/** Somebody saved in between: what stands there now, and what both started from when that is known. */
export interface Conflict {
  readonly now: GarmentRecord;
  readonly base: Content | null;
}
