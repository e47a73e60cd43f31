// Dates garments again in small shares, so that it can be stopped between any two of them and what is done stays done.
import type {Problem} from "../../engine/problem.ts";
import type {RackPage} from "../../store/model.ts";
import {getJson, sendForLines} from "../api.ts";
import {writeQuestion, type RackView} from "./address.ts";

export interface Moved {
  readonly id: string;
  readonly number: string;
  readonly from: string;
  readonly to: string;
  readonly why: string;
}

export interface DatedAgain {
  readonly done: number;
  readonly of: number;
  readonly moved: readonly Moved[];
  readonly same: number;
  readonly problems: readonly Problem[];
}

type Line = {readonly done: number; readonly of: number} | Pick<DatedAgain, "moved" | "same" | "problems">;

const share = 40;

/**
 * @param tell  called as it goes on, with all that is known so far
 * @param stop  when aborted, the share at hand is finished and the rest left as it is
 */
export async function dateAgain(ids: readonly string[], tell: (state: DatedAgain) => void, stop: AbortSignal): Promise<DatedAgain> {
  let state: DatedAgain = {done: 0, of: ids.length, moved: [], same: 0, problems: []};
  tell(state);
  for (let from = 0; from < ids.length && !stop.aborted; from += share) {
    const before = state;
    for await (const line of sendForLines<Line>("/api/rack/redate", {ids: ids.slice(from, from + share)})) {
      state =
        "moved" in line
          ? {...state, done: Math.min(ids.length, from + share), moved: [...before.moved, ...line.moved], same: before.same + line.same, problems: [...before.problems, ...line.problems]}
          : {...state, done: before.done + line.done};
      tell(state);
    }
  }
  return state;
}

/** The ids of every garment that fits a question, fetched page by page. */
export async function idsOf(query: RackView["query"], stop?: AbortSignal): Promise<string[]> {
  const ids: string[] = [];
  for (;;) {
    const {rows, total} = await getJson<RackPage>(`/api/rack?${writeQuestion(query, ids.length, 500)}`, {signal: stop});
    ids.push(...rows.map(({id}) => id));
    if (rows.length === 0 || ids.length >= total) return ids;
  }
}
