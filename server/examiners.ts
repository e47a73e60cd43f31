// Who examines garments for the server: this thread, or workers.
import type {Answer} from "../commands/command.ts";
import {examineJson, type ExaminedJson, type ExamineInput} from "../commands/rack/examine-json.ts";
import {dateAll, type Dated} from "../commands/rack/rack.ts";
import type {World} from "../commands/world.ts";
import {dateOdds, type WeighedDate} from "../commands/worth/date-odds.ts";
import type {Garment} from "../engine/index.ts";

export interface Examiners {
  date(garments: readonly Garment[], world: World, now: string): Promise<readonly Dated[]>;
  examine(input: ExamineInput, world: World): Promise<Answer<ExaminedJson>>;
  weigh(garment: Garment, looks: boolean, world: World): Promise<WeighedDate>;
}

export const inThisThread: Examiners = {
  date: async (garments, world, now) => dateAll(garments, world, now),
  examine: async (input, world) => examineJson(input, world),
  weigh: async (garment, looks, world) => dateOdds(garment, world, looks),
};
