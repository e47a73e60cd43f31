// A store on which long walks give everybody else a turn between any two pages; the driver itself never waits.
import {setImmediate} from "node:timers/promises";
import type {Store} from "../store/store.ts";

export function giveTurns(store: Store): Store {
  return {
    ...store,
    async walk(after, limit) {
      await setImmediate();
      return store.walk(after, limit);
    },
    async findSales(query) {
      await setImmediate();
      return store.findSales(query);
    },
    async walkSales(after, limit) {
      await setImmediate();
      return store.walkSales(after, limit);
    },
  };
}
