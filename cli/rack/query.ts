// Flags that choose garments, as a query of the rack.
import {Option, type Command} from "commander";
import type {Problem} from "../../engine/index.ts";
import {rackQuerySchema, sorts, standings, type RackQuery} from "../../store/model.ts";
import {NeedsMending} from "../ending.ts";
import * as say from "./problems.ts";

export interface QueryFlags {
  readonly from?: string;
  readonly until?: string;
  readonly atLeast?: string;
  readonly maker?: string;
  readonly type?: string;
  readonly place?: string;
  readonly standing?: RackQuery["standing"];
  readonly tag?: string;
  readonly sureness?: RackQuery["sureness"];
  readonly odd?: boolean;
  readonly removed?: boolean;
  readonly sort?: RackQuery["sort"];
  readonly turned?: boolean;
  readonly limit?: string;
}

const surenesses = rackQuerySchema.shape.sureness.unwrap().unwrap().options;

export function withQuery(command: Command): Command {
  return command
    .option("--from <year>", "made in this year or later")
    .option("--until <year>", "made in this year or earlier")
    .option("--at-least <share>", "how probable that has to be, from 0 to 1; 0.5 when left out")
    .option("--maker <id>", "of this maker's book")
    .option("--type <word>", "of this type")
    .option("--place <words>", "kept in this place")
    .addOption(new Option("--standing <word>", "standing so").choices(standings))
    .option("--tag <word>", "with this tag")
    .addOption(new Option("--sureness <word>", "dated so surely").choices(surenesses))
    .option("--odd", "with odd marks only")
    .option("--removed", "the removed ones instead")
    .addOption(new Option("--sort <by>", "in this order; by number when left out").choices(sorts))
    .option("--turned", "in the order turned round");
}

export function queryOf(words: readonly string[], flags: QueryFlags): RackQuery {
  const problems: Problem[] = [];
  const number = (at: string, given: string | undefined, pattern: RegExp, problem: (at: string, given: string) => Problem): number | undefined => {
    if (given === undefined || pattern.test(given)) return given === undefined ? undefined : Number(given);
    problems.push(problem(at, given));
    return undefined;
  };
  const year = /^\d{4}$/;
  const from = number("--from", flags.from, year, say.notYear);
  const until = number("--until", flags.until, year, say.notYear);
  const atLeast = number("--at-least", flags.atLeast, /^(?:0?\.\d+|0|1|1\.0*)$/, say.notShare);
  const limit = number("--limit", flags.limit, /^(?:[1-9]\d?|[1-4]\d\d|500)$/, say.notCount);
  if (problems.length > 0) throw new NeedsMending(problems);
  const {maker, type, place, standing, tag, sureness, odd, removed, sort = "number", turned = false} = flags;
  return rackQuerySchema.parse({text: words.join(" ").slice(0, 200), from, until, atLeast, maker, type, place, standing, tag, sureness, odd, removed, sort, descending: turned, limit});
}
