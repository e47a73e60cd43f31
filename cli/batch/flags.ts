// The flags of ticking batch.
import type {WorldFlags} from "../shared.ts";

export interface BatchFlags extends WorldFlags {
  readonly out?: string;
  readonly aside?: string;
  readonly whole?: boolean;
  readonly odd?: boolean;
  readonly carry?: readonly string[];
  readonly workers: string;
  readonly strict?: boolean;
  readonly maker?: string;
  readonly market?: string;
  readonly type?: string;
}
