// A store in memory, so that routes can be tried without a disk. What every driver must do is told by the contract suite of the store.
import type {BookEdition, GarmentRecord, Photo, RackPage, RackQuery, RackRow, Step} from "../../store/model.ts";
import type {Save, Saved, Store} from "../../store/store.ts";

export function memoryStore(): Store {
  const records = new Map<string, GarmentRecord>();
  const steps: Step[] = [];
  const photos = new Map<string, Photo>();
  const editions: BookEdition[] = [];
  const settings = new Map<string, string>();
  let count = 0;

  const conflictOf = ({id, base}: Save): Saved | null => {
    if (id === null) return null;
    const now = records.get(id);
    if (!now) return {unknown: true};
    return now.rev === base ? null : {conflict: {now, base: steps.find((step) => step.id === id && step.rev === base)?.content ?? null}};
  };
  const apply = ({id, content, removed, who, what, at}: Save): Saved => {
    const before = id === null ? null : records.get(id)!;
    const record: GarmentRecord = {
      id: id ?? `memory${String(++count).padStart(8, "0")}`, rev: (before?.rev ?? 0) + 1, createdAt: before?.createdAt ?? at, changedAt: at, changedBy: who, removed: removed ?? before?.removed ?? false, content: structuredClone(content),
    };
    records.set(record.id, record);
    steps.push({id: record.id, rev: record.rev, at, who, what, removed: record.removed, content: record.content});
    return {saved: record};
  };
  const saveAll = async (changes: readonly Save[]): Promise<readonly Saved[]> => {
    const stopped = changes.map(conflictOf);
    return stopped.some((one) => one !== null) ? stopped.map((one, i) => one ?? {conflict: {now: records.get(changes[i]!.id!)!, base: null}}) : changes.map(apply);
  };
  const ordered = () => [...records.values()].sort((a, b) => (a.id < b.id ? -1 : 1));

  return {
    get: async (id) => records.get(id) ?? null,
    byNumber: async (number) => ordered().find(({removed, content}) => !removed && content.garment.garment === number) ?? null,
    save: async (change) => (await saveAll([change]))[0]!,
    saveAll,
    search: async (query) => search(ordered(), query),
    walk: async (after, limit) => ordered().filter(({id}) => after === null || id > after).slice(0, limit),
    history: async (id) => steps.filter((step) => step.id === id),
    addPhoto: async (photo) => void photos.set(photo.photo, photo),
    photo: async (hash) => photos.get(hash) ?? null,
    photos: async (after, limit) => [...photos.values()].sort((a, b) => (a.photo < b.photo ? -1 : 1)).filter(({photo}) => after === null || photo > after).slice(0, limit),
    editions: async (book) => editions.filter((one) => book === undefined || one.book === book),
    addEdition: async (edition) => !editions.some((one) => one.book === edition.book && one.edition === edition.edition) && editions.push(edition) > 0,
    setting: async (key) => settings.get(key) ?? null,
    setSetting: async (key, value) => void (value === null ? settings.delete(key) : settings.set(key, value)),
    backup: async () => {},
    check: async () => [],
    close: async () => {},
  };
}

/** Text, maker, place and sureness alone; the rest of the query is up to real drivers. */
function search(records: readonly GarmentRecord[], {text, maker, place, sureness, removed, offset, limit}: RackQuery): RackPage {
  const fitting = records.filter(
    (record) =>
      record.removed === removed &&
      (text === "" || JSON.stringify(record.content.garment).toLowerCase().includes(text.toLowerCase())) &&
      (maker === null || record.content.dating?.maker === maker) &&
      (sureness === null || (record.content.dating?.sureness ?? "undated") === sureness) &&
      (place === null || record.content.place === place),
  );
  return {total: fitting.length, rows: fitting.slice(offset, offset + limit).map(rowOf), years: {first: 1900, garments: []}, values: {makers: [], types: [], places: [], tags: []}};
}

function rowOf({id, rev, changedAt, content: {garment, place, standing, asked, tags, photos, dating}}: GarmentRecord): RackRow {
  const brief = dating && (({years: _, ...rest}) => rest)(dating);
  return {id, rev, number: garment.garment, title: garment.title ?? "", type: garment.type ?? "", maker: dating?.maker ?? null, place, standing, asked, tags, cover: photos[0]?.photo ?? null, photos: photos.length, dating: brief, changedAt};
}
