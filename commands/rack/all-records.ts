// Walks over every garment that is kept, removed ones too, a page at a time.
import type {GarmentRecord} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";

const perPage = 200;

/** Garments in order of id, that is of age; what is added meanwhile comes, too. */
export async function* allRecords(store: Store): AsyncGenerator<GarmentRecord> {
  for (let after: string | null = null; ; ) {
    const records: readonly GarmentRecord[] = await store.walk(after, perPage);
    yield* records;
    if (records.length < perPage) return;
    after = records.at(-1)!.id;
  }
}
