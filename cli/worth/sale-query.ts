// Flags that choose sales, as a query.
import type {Problem} from "../../engine/index.ts";
import {saleQuerySchema, type SaleQuery} from "../../store/model.ts";
import {NeedsMending} from "../ending.ts";
import {notCount} from "../rack/problems.ts";
import * as say from "./problems.ts";

export interface SaleFlags {
  readonly kind?: string;
  readonly maker?: string;
  readonly grade?: SaleQuery["grade"];
  readonly channel?: string;
  readonly from?: string;
  readonly until?: string;
  readonly own?: boolean;
  readonly others?: boolean;
  readonly removed?: boolean;
  readonly sort?: SaleQuery["sort"];
  readonly turned?: boolean;
  readonly limit?: string;
}

export function saleQueryOf(words: readonly string[], flags: SaleFlags): SaleQuery {
  const {kind, maker, grade, channel, from, until, own = false, others = false, removed, sort = "sold", turned = false, limit} = flags;
  const problems: Problem[] = [["--from", from], ["--until", until]].flatMap(([flag, day]) => (day === undefined || isDay(day) ? [] : [say.notDay(flag!, day)]));
  if (limit !== undefined && !/^(?:[1-9]\d?|[1-4]\d\d|500)$/.test(limit)) problems.push(notCount("--limit", limit));
  if (problems.length > 0) throw new NeedsMending(problems);
  const descending = (sort === "sold" || sort === "changed") !== turned;
  return saleQuerySchema.parse({text: words.join(" ").slice(0, 200), kind, maker, grade, channel, from, until, own: own === others ? null : own, removed, sort, descending, ...(limit === undefined ? {} : {limit: Number(limit)})});
}

export const isDay = (text: string) => saleQuerySchema.shape.from.safeParse(text).success;
