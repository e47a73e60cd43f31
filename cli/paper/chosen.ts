// The garments that a paper is wanted of: named one by one, or found as in a list of the rack.
import type {GarmentRecord} from "../../store/model.ts";
import * as say from "../../paper/problems.ts";
import {NeedsMending} from "../ending.ts";
import {queryOf, type QueryFlags} from "../rack/query.ts";
import {garmentNamed, type OpenRack, type RackFlags} from "../rack/with-rack.ts";

export interface ChosenFlags extends RackFlags, QueryFlags {
  readonly number?: readonly string[];
}

export async function chosen(words: readonly string[], flags: ChosenFlags, rack: OpenRack): Promise<GarmentRecord[]> {
  const records = flags.number ? await named(flags.number, rack) : await found(words, flags, rack);
  if (records.length === 0) throw new NeedsMending([say.nothingChosen()]);
  return records;
}

async function named(numbers: readonly string[], rack: OpenRack): Promise<GarmentRecord[]> {
  const records: GarmentRecord[] = [];
  for (const number of numbers) records.push(await garmentNamed(number, rack));
  return records;
}

async function found(words: readonly string[], flags: ChosenFlags, {store}: OpenRack): Promise<GarmentRecord[]> {
  const query = {...queryOf(words, flags), limit: 500};
  const records: GarmentRecord[] = [];
  for (let offset = 0; ; offset += query.limit) {
    const {rows} = await store.search({...query, offset});
    for (const {id} of rows) records.push((await store.get(id))!);
    if (rows.length < query.limit) return records;
  }
}
