// The one interface behind which everything is kept; test/store/contract.ts says what every driver of it must do.
import type {BookEdition, Content, GarmentRecord, Photo, RackPage, RackQuery, Step} from "./model.ts";

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

/** What became of a change. */
export type Saved =
  | {readonly saved: GarmentRecord; readonly conflict?: undefined; readonly unknown?: undefined}
  /** Somebody saved in between: nothing was changed; here is what stands now and what both started from. */
  | {readonly conflict: {readonly now: GarmentRecord; readonly base: Content | null}; readonly saved?: undefined; readonly unknown?: undefined}
  | {readonly unknown: true; readonly saved?: undefined; readonly conflict?: undefined};

/** Of changes that are saved together: held says that nothing was wrong with this one, but another was stopped. */
export type SavedTogether = Saved | {readonly held: true; readonly saved?: undefined; readonly conflict?: undefined; readonly unknown?: undefined};

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
  /** Garments in order of id, after one, for exports and for dating again. */
  walk(after: string | null, limit: number): Promise<readonly GarmentRecord[]>;
  /** The steps of a garment, oldest first. */
  history(id: string): Promise<readonly Step[]>;

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
