// A listing as schema.org data: a Product with its Offer, and an estimate always told as one.
import {sayOdds} from "../../engine/index.ts";
import {readLength} from "../../state/length.ts";
import {toNumber} from "../../state/ratio.ts";
import {sayLength} from "../sheet/measure-words.ts";
import type {Material} from "../sheet/material.ts";
import {capital, makerName} from "../sheet/say.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {pointOf} from "../../state/point.ts";
import type {Json} from "../fact/canonical.ts";
import {digitsOf} from "../../worth/money/currencies.ts";
import {plainText} from "./plain.ts";
import type {Listing} from "./listing.ts";

/** Units by UN/CEFACT Recommendation 20. */
const unitCodes = {in: "INH", cm: "CMT"} as const;

type Data = {readonly [name: string]: Json};

/** Source of names and shapes: schema.org, Product, Offer, PropertyValue, QuantitativeValue. */
export function productData(listing: Listing, material: Material): Data {
  const {content, books, graded} = material;
  const {garment, sizes, asked, standing} = content;
  const condition: Data = graded === null ? {} : {itemCondition: graded.grade === "deadstock" ? "https://schema.org/NewCondition" : "https://schema.org/UsedCondition"};
  return {
    "@context": "https://schema.org",
    "@type": "Product",
    name: listing.title,
    sku: garment.garment,
    description: plainText(listing).trim(),
    ...(garment.type ? {category: capital(garment.type)} : {}),
    // The owner's own word on the maker, not a guess of ours.
    ...(typeof garment.maker === "string" ? {brand: {"@type": "Brand", name: makerName(books, garment.maker)}} : {}),
    ...(sizes?.tag ? {size: sizes.tag.text} : {}),
    ...condition,
    additionalProperty: [...estimates(material), ...measurements(material)],
    ...(asked
      ? {
          offers: {
            "@type": "Offer",
            price: priceOf(asked.cents, asked.currency),
            priceCurrency: asked.currency,
            ...condition,
            ...(standing === "for sale" ? {availability: "https://schema.org/InStock"} : standing === "sold" ? {availability: "https://schema.org/SoldOut"} : {}),
          },
        }
      : {}),
  };
}

function estimates({dating, finding, graded}: Material): Data[] {
  const value = (name: string, text: string): Data => ({"@type": "PropertyValue", name, value: text});
  const dated = finding.ledger.length > 0 && dating.kind !== "cannot tell" ? [value("Made (estimate)", `${dating.words}, ${sayOdds(dating.probability)}`)] : [];
  const bounds = finding.ledger.length > 0 ? [value("Made no earlier than (estimate)", dating.noEarlier), value("Made no later than (estimate)", dating.noLater)] : [];
  return [...dated, ...bounds, ...(graded ? [value("Grade", graded.grade)] : [])];
}

function measurements({content: {garment, sizes}}: Material): Data[] {
  const kind = kindOf(garment.type);
  return (sizes?.measures ?? []).map(({point, length}): Data => {
    const [known, read] = [pointOf(kind, point), readLength(length)];
    const name = capital(known?.name ?? point.replaceAll("-", " "));
    const typed = {"@type": "PropertyValue", name: known?.flat ? `${name}, laid flat` : name};
    if (!read) return {...typed, value: `${length.typed} ${length.unit}`};
    const inUnit = toNumber(read.mm) / (read.unit === "in" ? 25.4 : 10);
    return {...typed, value: Math.round(inUnit * 1e4) / 1e4, unitCode: unitCodes[read.unit], description: `as measured: ${sayLength(length, "both")}`};
  });
}

/** As schema.org wants it: a point as decimal sign, no currency, no thousands. */
function priceOf(cents: number, currency: string): string {
  const digits = digitsOf(currency) ?? 2;
  const figures = String(cents).padStart(digits + 1, "0");
  return digits === 0 ? figures : `${figures.slice(0, -digits)}.${figures.slice(-digits)}`;
}
