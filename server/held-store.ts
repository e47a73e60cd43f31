// A store that can be taken away and given anew while others hold on to it: for emptying a rack.
import {setImmediate} from "node:timers/promises";
import type {Store} from "../store/store.ts";

export interface HeldStore {
  /** Always the store of the moment. */
  readonly store: Store;
  /**
   * Lets everybody else wait, closes the store, and opens it again; also when the work fails.
   * @param before  done with the store that is about to be closed
   * @param after   done on its files while nobody has them open
   */
  renew(before: (old: Store) => Promise<void>, after: () => Promise<void>): Promise<void>;
}

/** @param open  opens the store; called once more for every renewal */
export async function holdStore(open: () => Promise<Store>): Promise<HeldStore> {
  let now = await open();
  let ready: Promise<unknown> = Promise.resolve();
  const when = async <T>(call: (store: Store) => Promise<T>): Promise<T> => {
    await ready;
    return call(now);
  };
  const store: Store = {
    get: (id) => when((one) => one.get(id)),
    byNumber: (number) => when((one) => one.byNumber(number)),
    save: (change) => when((one) => one.save(change)),
    saveAll: (changes) => when((one) => one.saveAll(changes)),
    search: (query) => when((one) => one.search(query)),
    // Long walks give everybody else a turn between any two pages.
    walk: async (after, limit) => {
      await setImmediate();
      return when((one) => one.walk(after, limit));
    },
    history: (id) => when((one) => one.history(id)),
    addPhoto: (photo) => when((one) => one.addPhoto(photo)),
    photo: (hash) => when((one) => one.photo(hash)),
    photos: (after, limit) => when((one) => one.photos(after, limit)),
    editions: (book) => when((one) => one.editions(book)),
    addEdition: (edition) => when((one) => one.addEdition(edition)),
    setting: (key) => when((one) => one.setting(key)),
    setSetting: (key, value) => when((one) => one.setSetting(key, value)),
    backup: (path) => when((one) => one.backup(path)),
    check: () => when((one) => one.check()),
    close: () => when((one) => one.close()),
  };
  const renewed = async (before: (old: Store) => Promise<void>, after: () => Promise<void>) => {
    await before(now);
    await now.close();
    try {
      await after();
    } finally {
      now = await open();
    }
  };
  return {
    store,
    renew(before, after) {
      const turn = ready.then(() => renewed(before, after));
      ready = turn.catch(() => {});
      return turn;
    },
  };
}
