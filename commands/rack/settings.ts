// The settings that the owner changes by name: a line a name, with the shape of its value and what holds while nothing is saved.
import {z} from "zod";
import {listingTemplateSchema} from "../paper/listing-template.ts";
import {defaultRule} from "../../state/default-rule.ts";
import {gradeRuleSchema} from "../../state/rule.ts";
import {defaultMap} from "../../reader/map.ts";
import {readingMapSchema} from "../../reader/model.ts";
import {termsSchema} from "../../worth/model.ts";

/** Who stands behind the papers, and whose law the cautions speak of. */
export const ownerSchema = z.strictObject({
  name: z.string().max(200).default(""),
  country: z.string().regex(/^(?:[A-Z]{2})?$/).default("").describe("ISO 3166-1, two letters; empty: not said"),
  address: z.array(z.string().max(200)).max(8).default([]).describe("lines"),
});
export type Owner = z.infer<typeof ownerSchema>;

export interface Setting<T = unknown> {
  readonly schema: z.ZodType<T>;
  /** Holds while nothing is saved. */
  readonly unset: T;
}

/** A setting whose shape fills in everything that is left out. */
const filled = <T>(schema: z.ZodType<T>): Setting<T> => ({schema, unset: schema.parse({})});

export const settings = {
  "terms": filled(termsSchema),
  "owner": filled(ownerSchema),
  "listing-template": filled(listingTemplateSchema),
  "reading-map": {schema: readingMapSchema, unset: defaultMap},
  "grade-rule": {schema: gradeRuleSchema, unset: defaultRule},
} as const satisfies Readonly<Record<string, Setting>>;

export type SettingName = keyof typeof settings;
export type SettingValue<N extends SettingName> = z.output<(typeof settings)[N]["schema"]>;

export const settingNames = Object.keys(settings) as readonly SettingName[];

/** The key under which the store keeps a setting. */
export const settingKey = (name: SettingName) => `shop.${name}`;
