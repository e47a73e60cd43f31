// Shows and saves a setting by its name, on top of the revision it was changed from.
import {z} from "zod";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import * as say from "./problems.ts";
import {rackCommand, unfit, unknown} from "./rack-command.ts";
import {keptSchema, readSetting, type ReadSetting} from "./read-setting.ts";
import {settingKey, settingNames, settings, type SettingName} from "./settings.ts";

const {changedAt, changedBy} = keptSchema.shape;
const name = z.string().max(60).describe("terms, owner ...");
const shownSchema = z.strictObject({
  name,
  rev: z.number().int().min(0).describe("0: nothing is saved, and the usual value holds"),
  value: z.unknown(),
  changedAt: changedAt.nullable(),
  changedBy: changedBy.nullable(),
  fits: z.boolean().describe("false: what was saved does not fit this program, and the usual value holds"),
});

export const getSetting = rackCommand({
  name: "setting.get",
  summary: "show a setting, or what holds while nothing is saved",
  route: {method: "get", path: "/api/settings/{name}"},
  input: z.strictObject({name}),
  output: shownSchema,
  async run({name: given}, {store}) {
    return isName(given) ? {answer: shown(given, await readSetting(store, given))} : unknown(say.noSetting(given, settingNames));
  },
});

export const saveSetting = rackCommand({
  name: "setting.save",
  summary: "save a setting; refused when somebody saved it in between",
  route: {method: "put", path: "/api/settings/{name}"},
  input: z.strictObject({name, base: shownSchema.shape.rev.describe("the revision that was changed"), value: z.unknown()}),
  output: shownSchema,
  async run({name: given, base, value}, {store, who, now}) {
    if (!isName(given)) return unknown(say.noSetting(given, settingNames));
    const {fits, problems} = checkShape<z.ZodType>(settings[given].schema, value, (path) => `value ${printPath(path)}`.trimEnd());
    if (problems) return unfit(problems);
    const before = await readSetting(store, given);
    const kept = JSON.stringify({rev: before.rev + 1, changedAt: now, changedBy: who, value: fits});
    if (before.rev === base && (await store.swapSetting(settingKey(given), before.text, kept))) return {answer: shown(given, await readSetting(store, given))};
    const newest = await readSetting(store, given);
    return {refused: "conflict", problems: [say.settingSavedBetween(given, newest.changedBy ?? "somebody", newest.changedAt ?? "")], more: {now: shown(given, newest)}};
  },
});

const isName = (given: string): given is SettingName => Object.hasOwn(settings, given);

const shown = (given: SettingName, {rev, value, changedAt: at, changedBy: by, fits}: ReadSetting<SettingName>) => ({name: given, rev, value, changedAt: at, changedBy: by, fits});
