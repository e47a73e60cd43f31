// The reading map fitted to what was settled on the rack.
import {beforeEach, describe, expect, it} from "vitest";
import {openRack} from "../../../commands/rack/open-rack.ts";
import type {Rack} from "../../../commands/rack/rack.ts";
import {performOnRack} from "../../../commands/rack/rack-command.ts";
import {confirmedRows} from "../../../commands/reading/refit/confirmed.ts";
import {reliabilityPicture} from "../../../commands/reading/refit/reliability-picture.ts";
import {fewestConfirmed, refitReadingMap} from "../../../commands/reading/refit-reading-map.ts";
import {readSetting} from "../../../commands/rack/read-setting.ts";
import {addGarment} from "../../../commands/rack/add-garment.ts";
import {defaultMap, mapRow} from "../../../reader/map.ts";
import type {LabelReading} from "../../../reader/model.ts";
import {seeded} from "../../simulate/random.ts";
import {storeInMemory} from "../../server/test-app.ts";
import {world as small} from "../small-world.ts";
import {madeRow} from "./made-row.ts";

const empty = {text: null, places: {}, left: false};

/** A reading of one row a time; every so manieth is wrong although the reader was sure. */
function readings(count: number, wrong: number): LabelReading["rows"] {
  const random = seeded(5);
  return Array.from({length: count}, () => {
    const truth = Array.from({length: 6}, () => random.whole(0, 9)).join("");
    const other = truth.slice(0, 5) + String((Number(truth[5]) + 3) % 10);
    const {row} = madeRow(random.happens(wrong) ? {[other]: 0.95, [truth]: 0.04} : {[truth]: 0.95, [other]: 0.04});
    return {read: mapRow(row, defaultMap), settled: {...empty, text: truth}};
  });
}

const labelled = (rows: LabelReading["rows"]) => ({garment: {garment: "7", saw: {}}, labels: [{photo: "a".repeat(64), reader: "made up", outline: null, turn: 0 as const, map: defaultMap, rows}]});

let rack: Rack;
beforeEach(async () => {
  rack = await openRack({store: storeInMemory(), shipped: small.books, now: "2026-11-05T00:00:00.000Z", who: "Ana", today: small.today});
});

describe("confirmed rows", () => {
  it("are those that were settled, as the recogniser itself said them", () => {
    const {row} = madeRow({"384": 0.6, "334": 0.3});
    const read = mapRow(row, defaultMap);
    const known = confirmedRows([{map: defaultMap, rows: [
      {read, settled: null}, {read, settled: {...empty, left: true}}, {read, settled: empty},
      {read, settled: {...empty, text: "38?"}}, {read, settled: {...empty, text: " 334 "}}, {read, settled: {...empty, places: {"1": "8"}}},
    ]}]);
    expect(known.map(({truth}) => truth)).toEqual(["334", "384"]);
    expect(known[0]!.row.strings[0]!.p).toBeCloseTo(0.6, 9);
  });
});

describe("refitting", () => {
  it("wants enough settled rows, and says how many there are", async () => {
    const reply = await performOnRack(refitReadingMap, {try: true}, rack);
    expect(reply.refused && reply.problems[0]).toMatchObject({code: "reading/too-few-confirmed"});
    await performOnRack(addGarment, {content: labelled(readings(7, 0))}, rack);
    const again = await performOnRack(refitReadingMap, {try: true}, rack);
    expect(again.refused && again.problems[0]!.what).toContain("7 rows");
  });
  it("trusts a reader less that is often wrong when it is sure, and brings said and right together", async () => {
    for (let i = 0; i < 3; i++) await performOnRack(addGarment, {content: labelled(readings(40, 0.3))}, rack);
    const {answer} = await performOnRack(refitReadingMap, {try: true}, rack);
    expect(answer!.confirmed).toBeGreaterThanOrEqual(fewestConfirmed);
    expect(answer!.map.temper).toBeGreaterThan(defaultMap.temper);
    expect(answer!.after.rowError).toBeLessThan(answer!.before.rowError);
    expect(answer!.after.surprise).toBeLessThan(answer!.before.surprise);
    expect((await readSetting(rack.store, "reading-map")).rev).toBe(0);
  });
  it("saves the map when it is no try", async () => {
    await performOnRack(addGarment, {content: labelled(readings(30, 0.3))}, rack);
    const {answer} = await performOnRack(refitReadingMap, {try: false}, rack);
    expect(answer!.saved).toBe(true);
    const kept = await readSetting(rack.store, "reading-map");
    expect(kept).toMatchObject({rev: 1, value: answer!.map});
  });
});

describe("the picture of reliability", () => {
  it("shows both series by shape, and every bin in words", () => {
    const svg = reliabilityPicture("Whole rows", [{from: 0.9, to: 1, count: 12, said: 0.95, right: 0.8}], [{from: 0.8, to: 0.9, count: 12, said: 0.82, right: 0.8}]);
    expect(svg).toContain("before: says 95 in 100, right 80 of 100 (12)");
    expect(svg).toContain("after: says 82 in 100, right 80 of 100 (12)");
    expect(svg.match(/<circle/g)).toHaveLength(2);
    expect(svg.startsWith("<svg")).toBe(true);
  });
});
