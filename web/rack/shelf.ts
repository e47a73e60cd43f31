// What both layouts of the rack are given.
import type {RackRow} from "../../store/model.ts";
import type {Picked} from "./use-picked.ts";

export interface Shelf {
  readonly total: number;
  readonly rowAt: (index: number) => RackRow | undefined;
  readonly want: (first: number, last: number) => void;
  readonly picked: Picked;
  /** Title of a maker's book. */
  readonly makerName: (maker: string) => string;
}
