// Reads a setting as it is kept: its value, its revision, and whether what was saved still fits.
import {z} from "zod";
import {recordSchema} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import {settingKey, settings, type SettingName, type SettingValue} from "./settings.ts";

/** How a setting stands in the store. */
export const keptSchema = z.strictObject({rev: z.number().int().min(1), changedAt: recordSchema.shape.changedAt, changedBy: recordSchema.shape.changedBy, value: z.unknown()});

export interface ReadSetting<N extends SettingName> {
  /** 0: nothing is saved. */
  readonly rev: number;
  readonly value: SettingValue<N>;
  readonly changedAt: string | null;
  readonly changedBy: string | null;
  /** False: what was saved does not fit this program, and the usual value holds. */
  readonly fits: boolean;
  /** As it stands in the store; null for nothing. */
  readonly text: string | null;
}

export async function readSetting<N extends SettingName>(store: Pick<Store, "setting">, name: N): Promise<ReadSetting<N>> {
  const {schema, unset} = settings[name];
  const text = await store.setting(settingKey(name));
  const usual = unset as SettingValue<N>;
  if (text === null) return {rev: 0, value: usual, changedAt: null, changedBy: null, fits: true, text};
  const {rev, changedAt, changedBy, value} = keptSchema.parse(JSON.parse(text));
  const read = schema.safeParse(value);
  return {rev, value: read.success ? (read.data as SettingValue<N>) : usual, changedAt, changedBy, fits: read.success, text};
}
