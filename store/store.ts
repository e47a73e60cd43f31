// The one interface behind which everything is kept; test/store/contract.ts says what every driver of it must do.
import type {Sale, SaleRecord} from "../worth/model.ts";
import type {BookEdition, Content, GarmentRecord, Photo, RackPage, RackQuery, SalePage, SaleQuery, SaleStep, Step} from "./model.ts";

/** A change to be saved: a whole content on top of the revision it was made from. */
export interface Save {
  /** null: a new garment. */
  readonly id: string | null;
  /** The revision that was changed; 0 for a new garment. */
  readonly base: number;
  readonly content: Content;
  readonly removed?: boolean;
  readonly who: string;
  readonly what: string;
  /** UTC, given by the caller: the store has no clock. */
  readonly at: string;
}

/** A change of a sale that was written down, to be saved. */
export interface SaleSave extends Omit<Save, "content"> {
  readonly sale: Sale;
}

/** What became of a change. */
export type Outcome<Kept, Body> =
  | {readonly saved: Kept; readonly conflict?: undefined; readonly unknown?: undefined}
  /** Somebody saved in between: nothing was changed; here is what stands now and what both started from. */
  | {readonly conflict: {readonly now: Kept; readonly base: Body | null}; readonly saved?: undefined; readonly unknown?: undefined}
  | {readonly unknown: true; readonly saved?: undefined; readonly conflict?: undefined};

/** Nothing was wrong with this change, but another one that was to be saved with it was stopped. */
export type Held = {readonly held: true; readonly saved?: undefined; readonly conflict?: undefined; readonly unknown?: undefined};

export type Saved = Outcome<GarmentRecord, Content>;
export type SavedTogether = Saved | Held;
export type SavedSale = Outcome<SaleRecord, Sale> | Held;

/** What changed about sales since a mark. */
export interface SalesSince {
  /** To ask with the next time. */
  readonly mark: number;
  /** These are all there are, and whatever was known before is to be forgotten. */
  readonly whole: boolean;
  readonly sales: readonly Pick<SaleRecord, "id" | "garment" | "removed" | "sale">[];
}

export interface Store {
  /** A garment, removed or not; null when there is none. */
  get(id: string): Promise<GarmentRecord | null>;
  /** By the owner's own number; null when none or only removed ones carry it. */
  byNumber(number: string): Promise<GarmentRecord | null>;
  /** Saves one change; on return it is on the disk. */
  save(change: Save): Promise<Saved>;
  /** Saves all or none; the answers in order. A conflict anywhere saves none. No garment may be among them twice. */
  saveAll(changes: readonly Save[]): Promise<readonly SavedTogether[]>;
  search(query: RackQuery): Promise<RackPage>;
  /** How many garments hang on the rack, removed ones not counted. */
  count(): Promise<number>;
  /** Garments in order of id, after one, for exports and for dating again. */
  walk(after: string | null, limit: number): Promise<readonly GarmentRecord[]>;
  /** The steps of a garment, oldest first. */
  history(id: string): Promise<readonly Step[]>;

  /** A sale, written down or of a garment that was sold; null when there is none. */
  sale(id: string): Promise<SaleRecord | null>;
  /** Saves all or none, the answers in order. The sale of a garment is unknown here: it follows the garment. No sale may be among them twice. */
  saveSales(changes: readonly SaleSave[]): Promise<readonly SavedSale[]>;
  findSales(query: SaleQuery): Promise<SalePage>;
  /** Sales of either kind in order of id, after one, removed ones too. */
  walkSales(after: string | null, limit: number): Promise<readonly SaleRecord[]>;
  /** The steps of a sale that was written down, oldest first. */
  saleHistory(id: string): Promise<readonly SaleStep[]>;
  /** For those who keep sales in memory. @param mark  the mark of the last time; null: the first time */
  salesSince(mark: number | null): Promise<SalesSince>;

  /** Notes a photo whose files are in place; the same photo twice is one. */
  addPhoto(photo: Photo): Promise<void>;
  photo(hash: string): Promise<Photo | null>;
  photos(after: string | null, limit: number): Promise<readonly Photo[]>;

  /** Editions of the owner's books, oldest first, of one book or of all. */
  editions(book?: string): Promise<readonly BookEdition[]>;
  /** Adds an edition; false when that edition is already there. */
  addEdition(edition: BookEdition): Promise<boolean>;

  setting(key: string): Promise<string | null>;
  setSetting(key: string, value: string | null): Promise<void>;
  /** Changes a setting that stands as it was seen, null for not at all; false, and nothing changed, when it does not. */
  swapSetting(key: string, seen: string | null, value: string): Promise<boolean>;

  /** A copy of everything in one consistent file, while others go on writing. */
  backup(path: string): Promise<void>;
  /** What the database itself finds wrong with its files; nothing when sound. */
  check(): Promise<readonly string[]>;
  close(): Promise<void>;
}
