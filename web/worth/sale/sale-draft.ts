// What was typed of a sale and not saved yet, kept on this device: a reload or a crash loses none of it.
import type {SaleRecord} from "../../../worth/model.ts";
import type {SaleEntry} from "./sale-entry.ts";

interface Draft {
  readonly rev: number;
  readonly entry: SaleEntry;
}

const keyOf = (record: SaleRecord | null) => `ticking.sale.${record?.id ?? "new"}`;

/** Null when there is none, or when the sale was changed since. */
export function saleDraft(record: SaleRecord | null): SaleEntry | null {
  const kept = localStorage.getItem(keyOf(record));
  if (kept === null) return null;
  const {rev, entry} = JSON.parse(kept) as Draft;
  return rev === (record?.rev ?? 0) ? entry : null;
}

export const keepSaleDraft = (record: SaleRecord | null, entry: SaleEntry): void => localStorage.setItem(keyOf(record), JSON.stringify({rev: record?.rev ?? 0, entry} satisfies Draft));

export const dropSaleDraft = (record: SaleRecord | null): void => localStorage.removeItem(keyOf(record));
