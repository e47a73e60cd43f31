// The lot that is being looked at, kept on this device: at the market a phone goes to sleep, and nothing typed is lost.

export interface LotDraft {
  readonly ids: readonly string[];
  /** Garments that were drawn blindly and stand for those nobody looked at; none: all stand for them. */
  readonly sampled: readonly string[];
  /** As typed. */
  readonly unexamined: string;
  readonly asked: string;
}

const key = "ticking.lot";
export const emptyLot: LotDraft = {ids: [], sampled: [], unexamined: "", asked: ""};

export function readLot(): LotDraft {
  const kept = localStorage.getItem(key);
  return kept === null ? emptyLot : {...emptyLot, ...(JSON.parse(kept) as Partial<LotDraft>)};
}

export const keepLot = (lot: LotDraft): void => localStorage.setItem(key, JSON.stringify(lot));

/** Garments are added behind those that are there; none twice. */
export const withGarments = (lot: LotDraft, ids: readonly string[]): LotDraft => ({...lot, ids: [...new Set([...lot.ids, ...ids])]});

export const withoutGarment = (lot: LotDraft, id: string): LotDraft => ({...lot, ids: lot.ids.filter((one) => one !== id), sampled: lot.sampled.filter((one) => one !== id)});

/** How many there are that nobody looked at; null when what is typed is no such number. */
export function unexaminedOf({unexamined}: Pick<LotDraft, "unexamined">): number | null {
  const bare = unexamined.trim();
  if (bare === "") return 0;
  return /^\d{1,5}$/.test(bare) ? Number(bare) : null;
}

/** Numbers as they are typed: with commas, semicolons, spaces or lines between. */
export const numbersIn = (text: string): readonly string[] => [...new Set(text.split(/[\s,;]+/).filter((one) => one !== ""))];
