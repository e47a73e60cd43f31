// Fits the reading map to confirmed readings, drawn towards the shipped map as long as they are few.
import {defaultMap} from "../../../reader/map.ts";
import type {ReadingMap} from "../../../reader/model.ts";
import type {Confirmed} from "./confirmed.ts";
import {characterLoss, lossOf} from "./reliability.ts";

/** So many confirmed rows weigh as much as the shipped map. Source: own choice. */
const priorRows = 20;
/** Nothing may be more certain than confirmed rows can show: of n right ones the next is wrong about once in n + 2. Source: Laplace's rule of succession (from memory). */
const mostCap = (count: number) => Math.min(0.99, Math.max(defaultMap.cap, 1 - 1 / (count + 2)));

/**
 * The map under which confirmed readings were least surprising.
 * One number after the other is searched by halving steps, three rounds: the loss bends gently, and nothing hangs on the last digit.
 */
export function fitMap(confirmed: readonly Confirmed[]): ReadingMap {
  const cap = Math.min(mostCap(confirmed.length), defaultMap.cap);
  const share = priorRows / (priorRows + confirmed.length);
  const away = (map: ReadingMap) => (share / (1 - share)) * (Math.log(map.temper / defaultMap.temper) ** 2 + (map.mass - defaultMap.mass) ** 2 + 4 * (map.places - defaultMap.places) ** 2);
  const ofRows = (map: ReadingMap) => lossOf(confirmed, map) + away(map);
  const ofPlaces = (map: ReadingMap) => characterLoss(confirmed, map) + away(map);
  let map: ReadingMap = {...defaultMap, cap};
  for (let round = 0; round < 3; round++) {
    map = {...map, temper: least((temper) => ofRows({...map, temper}), map.temper, [0.4, 3])};
    map = {...map, mass: least((mass) => ofRows({...map, mass}), map.mass, [0, 2])};
  }
  return {...map, places: least((places) => ofPlaces({...map, places}), map.places, [0, 1])};
}

/** The place of the least value between two ends, to a thousandth of the way. */
function least(value: (x: number) => number, start: number, [from, until]: readonly [number, number]): number {
  let [best, step] = [Math.min(until, Math.max(from, start)), (until - from) / 4];
  let lowest = value(best);
  while (step > (until - from) / 1000) {
    const better = [best - step, best + step].filter((x) => x >= from && x <= until).map((x) => ({x, v: value(x)})).sort((a, b) => a.v - b.v)[0];
    if (better && better.v < lowest - 1e-12) [best, lowest] = [better.x, better.v];
    else step /= 2;
  }
  return Number(best.toFixed(4));
}
