// What the page and the engine's worker say to each other.
import type {Brief, Finding, Garment, Problem} from "../../engine/index.ts";

export type Ask =
  | {readonly books: string; readonly today: string}
  | {readonly id: number; readonly garment: Garment; /** A mark to leave out: the date alone is answered. */ readonly without: string | null};

export type Told =
  | {readonly id: number; readonly brief: Brief}
  | {readonly id: number; readonly finding: Finding}
  | {readonly id: number; readonly problems: readonly Problem[]};
