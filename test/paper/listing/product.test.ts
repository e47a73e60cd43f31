// schema.org data of a listing, checked by a validator from outside and by the published types.
import {readdirSync, readFileSync} from "node:fs";
import {createRequire} from "node:module";
import type {Product, WithContext} from "schema-dts";
import {beforeAll, expect, test} from "vitest";
import type {Rack} from "../../../commands/rack/rack.ts";
import {composeListing} from "../../../paper/listing/listing.ts";
import {productData} from "../../../paper/listing/product.ts";
import type {Material} from "../../../paper/sheet/material.ts";
import {materialOf, newRack, rich} from "../material.ts";

// Oracle: schemaorg-jsd 0.17.1 (MIT), the schema.org vocabulary as JSON Schemas, run by Ajv 7.2.4. Its own program fetches the schema of JSON-LD
// from the network, so its files are read instead; JSON-LD itself is not checked by it.
const packages = createRequire(import.meta.url);
interface Checker {
  addMetaSchema(schemas: readonly object[]): Checker;
  addSchema(schemas: object): Checker;
  validate(id: string, data: unknown): boolean;
  readonly errors: unknown;
}
const Ajv = (packages("ajv") as {default: new (options: object) => Checker}).default;
const folder = packages.resolve("schemaorg-jsd/package.json").replace(/package\.json$/, "");
const schemas = (part: string) => readdirSync(`${folder}${part}`).map((file) => JSON.parse(readFileSync(`${folder}${part}/${file}`, "utf8")) as object);
const ajv = new Ajv({strict: false, formats: {"uri-reference": true, "date": true, "date-time": true}}).addMetaSchema(schemas("meta")).addSchema({$id: "https://json-ld.org/schemas/jsonld-schema.json", type: ["object", "array"]}).addSchema(schemas("schema"));
const faults = (data: unknown, type: string) => (ajv.validate(`https://chharvey.github.io/schemaorg-jsd/schema/${type}.jsd`, data) ? [] : ajv.errors);

let rack: Rack;
let all: Material[];
beforeAll(async () => {
  rack = await newRack();
  all = [await materialOf("0147", rack, {...rich, standing: "for sale"}), await materialOf("0187", rack, {}), await materialOf("0403", rack, {asked: {cents: 1200, currency: "JPY"}, standing: "sold"})];
});
const data = (material: Material) => productData(composeListing(material), material) as unknown as WithContext<Product> & Record<string, never>;

test("the outside validator finds nothing wrong with it, and finds what is wrong", () => {
  for (const material of all) {
    const product = JSON.parse(JSON.stringify(data(material))) as Record<string, unknown>;
    // Its schema knows one property beside the listed ones, where JSON-LD lets every property be a list: each is tried by itself.
    for (const property of product.additionalProperty as object[]) expect(faults({...product, additionalProperty: property}, "Product"), String(product.sku)).toEqual([]);
    const context = {"@context": "https://schema.org"};
    if (product.offers) expect(faults({...context, ...product.offers}, "Offer")).toEqual([]);
    for (const property of product.additionalProperty as object[]) expect(faults({...context, ...property}, "PropertyValue")).toEqual([]);
    expect(faults({...product, additionalProperty: {"@type": "PropertyValue", value: 7}, name: 7}, "Product")).not.toEqual([]);
    expect(faults({...product, additionalProperty: {"@type": "PropertyValue", value: 7}, offers: "for sale"}, "Product")).not.toEqual([]);
  }
});

// Source: schema.org, Product, Offer, PropertyValue; UN/CEFACT Recommendation 20: INH inch, CMT centimetre; ISO 4217: the yen has no smaller unit.
test("price, currency, condition, availability and units are spelled as the vocabulary asks", () => {
  const [forSale, bare, sold] = all.map(data) as unknown as Record<string, any>[];
  expect(forSale).toMatchObject({"@context": "https://schema.org", "@type": "Product", sku: "0147", size: "W 34 L 32", itemCondition: "https://schema.org/UsedCondition"});
  expect(forSale!.offers).toEqual({"@type": "Offer", price: "85.00", priceCurrency: "EUR", itemCondition: "https://schema.org/UsedCondition", availability: "https://schema.org/InStock"});
  expect(forSale!.additionalProperty).toContainEqual({"@type": "PropertyValue", name: "Waist, laid flat", value: 16.25, unitCode: "INH", description: "as measured: 16 1/4 in (41.5 cm)"});
  expect(forSale!.additionalProperty).toContainEqual(expect.objectContaining({name: "Outseam", value: 101, unitCode: "CMT"}));
  expect(sold!.offers).toMatchObject({price: "1200", priceCurrency: "JPY", availability: "https://schema.org/SoldOut"});
  expect(bare!.offers).toBeUndefined();
  expect(bare!.itemCondition).toBeUndefined();
});

test("a date is told as an estimate with its odds, never as a date of production", () => {
  for (const product of all.map(data) as unknown as Record<string, any>[]) {
    expect(JSON.stringify(product)).not.toMatch(/productionDate|releaseDate/);
    const made = product.additionalProperty.find(({name}: {name: string}) => name === "Made (estimate)");
    expect(made.value).toMatch(/in 100$/);
    expect(product.description).toContain("The date is an estimate");
  }
});
