// What the page and the engine's workers say to each other.
import type {Brief, Finding, Garment, Problem} from "../../engine/index.ts";

/** The date alone, or with all its reasons. */
export type Depth = "date" | "whole";

export type Ask =
  | {readonly books: string; readonly today: string}
  | {readonly id: number; readonly garment: Garment; readonly depth: Depth; /** A mark to leave out. */ readonly without: string | null};

export type Told =
  | {readonly id: number; readonly brief: Brief}
  | {readonly id: number; readonly finding: Finding}
  | {readonly id: number; readonly problems: readonly Problem[]};
