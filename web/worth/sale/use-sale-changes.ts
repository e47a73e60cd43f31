// Adds, changes and takes out sales, each with a way back.
import {useCallback, useState} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {Sale, SaleRecord} from "../../../worth/model.ts";
import {ApiFault, problemsOf, sendJson} from "../../api.ts";

export interface Done {
  readonly words: string;
  /** Null once it was taken back. */
  readonly undo: (() => Promise<void>) | null;
}

export interface SaleChanges {
  readonly done: Done | null;
  readonly problems: readonly Problem[];
  /** Problems of a save that was refused; none when it is saved. */
  readonly save: (record: SaleRecord | null, sale: Sale) => Promise<readonly Problem[]>;
  readonly takeOut: (record: SaleRecord) => Promise<void>;
  readonly putBack: (record: SaleRecord) => Promise<void>;
}

const add = (sale: Sale) => sendJson<SaleRecord>("POST", "/api/sales", {sale});
const change = ({id, rev}: SaleRecord, sale: Sale) => sendJson<SaleRecord>("PUT", `/api/sales/${id}`, {base: rev, sale});
const remove = ({id, rev}: SaleRecord) => sendJson<SaleRecord>("DELETE", `/api/sales/${id}?base=${rev}`);
const restore = ({id, rev}: SaleRecord) => sendJson<SaleRecord>("POST", `/api/sales/${id}/put-back`, {base: rev});

/**
 * @param onChanged  called after every change, and after every change that was taken back
 * @param onNewer    called with the sale as somebody else saved it in between: saving once more then goes on top of that
 */
export function useSaleChanges(onChanged: () => void, onNewer: (record: SaleRecord) => void): SaleChanges {
  const [done, setDone] = useState<Done | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);

  const settle = useCallback(
    async (work: () => Promise<{words: string; back: (() => Promise<{words: string}>) | null}>): Promise<readonly Problem[]> => {
      try {
        const {words, back} = await work();
        setProblems([]);
        setDone({words, undo: back && (async () => void (await settle(async () => ({...(await back()), back: null}))))});
        onChanged();
        return [];
      } catch (error) {
        if (error instanceof ApiFault && error.status === 409) onNewer((error.body as {now: SaleRecord}).now);
        return problemsOf(error);
      }
    },
    [onChanged, onNewer],
  );

  const save = useCallback(
    (record: SaleRecord | null, sale: Sale) =>
      settle(async () => {
        if (!record) {
          const added = await add(sale);
          return {words: "Written down.", back: async () => (await remove(added), {words: "Not written down after all."})};
        }
        const changed = await change(record, sale);
        return {words: "Changed.", back: async () => (await change(changed, record.sale), {words: "As it was before."})};
      }),
    [settle],
  );
  const takeOut = useCallback(
    async (record: SaleRecord) =>
      setProblems(
        await settle(async () => {
          const removed = await remove(record);
          return {words: "Taken out of the sales.", back: async () => (await restore(removed), {words: "Put back among the sales."})};
        }),
      ),
    [settle],
  );
  const putBack = useCallback(
    async (record: SaleRecord) =>
      setProblems(
        await settle(async () => {
          const back = await restore(record);
          return {words: "Put back among the sales.", back: async () => (await remove(back), {words: "Taken out of the sales."})};
        }),
      ),
    [settle],
  );
  return {done, problems, save, takeOut, putBack};
}
