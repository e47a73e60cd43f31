// The flags of ticking read.
import type {WorldFlags} from "../shared.ts";

export interface ReadFlags extends WorldFlags {
  readonly maker?: string;
  readonly label?: string;
  readonly date?: boolean;
  readonly turn?: string;
  readonly json?: boolean;
}
