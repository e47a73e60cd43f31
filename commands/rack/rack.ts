// What a command on the rack works with beside its input: the store, the books in use, who asks, and when.
import type {Book, Garment, Problem} from "../../engine/index.ts";
import type {Dating} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import type {Answer} from "../command.ts";
import type {WeighedDate} from "../worth/date-odds.ts";
import type {World} from "../world.ts";
import {datingOf} from "./dating.ts";
import type {ExaminedJson, ExamineInput} from "./examine-json.ts";

export type Dated = {readonly dating: Dating; readonly problems?: undefined} | {readonly dating?: undefined; readonly problems: readonly Problem[]};

export interface Rack {
  readonly store: Store;
  /** The books that come with the tool and the newest editions of the owner's, and the current month. */
  readonly world: World;
  /** The books that come with the tool. */
  readonly shipped: readonly Book[];
  /** UTC. */
  readonly now: string;
  /** Who makes the change, for the history. */
  readonly who: string;
  /** Dates garments in their order; a server hands the work to a worker, here and when examining. */
  readonly date: (garments: readonly Garment[]) => Promise<readonly Dated[]>;
  readonly examine: (input: ExamineInput) => Promise<Answer<ExaminedJson>>;
  /** The odds of a garment's years and makers, and with looks what the next ones could show; a server hands this to a worker, too. */
  readonly weigh: (garment: Garment, looks: boolean) => Promise<WeighedDate>;
  /** Sees to it that garments which are kept undated get dated; a server does so in the background. */
  readonly dateLater: (ids: readonly string[]) => Promise<void>;
}

/** Dates garments by the books of a world. */
export function dateAll(garments: readonly Garment[], world: World, now: string): Dated[] {
  return garments.map((garment) => {
    const {finding, problems} = world.examiner().examine(garment);
    return problems ? {problems} : {dating: datingOf(finding, world.books, now)};
  });
}
