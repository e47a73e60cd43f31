// What has to be said beside a price, by country.

/** General ones first, each with its source where it has one. */
export function cautionsFor(country: string | null): string[] {
  return [...general, ...(byCountry[country?.toUpperCase() ?? ""] ?? [])];
}

const general = [
  "An estimate from the sales you keep, not a certified appraisal. For tax, insurance, an estate or a court go to a qualified appraiser.",
  "What insurance would pay to replace it is another figure, usually a higher one.",
  "Tax and what a seller owes a buyer follow the law where you sell: the shares set here are yours to check.",
];

/** Source: the public facts on appraisal and value, ids in brackets; what is from memory says so. */
const byCountry: Readonly<Record<string, readonly string[]>> = {
  US: [
    "United States: the tax office counts the price between a willing buyer and a willing seller (26 CFR 1.170A-1(c)(2)).",
    "United States: clothing given away for more than USD 5,000 needs a qualified appraisal and Form 8283 Section B, for more than USD 500 Section A (26 U.S.C. 170(f)(11); thresholds from memory).",
    "United States: an appraiser must not be the donor, the receiver or a party to the sale, nor be paid a share of the value (26 CFR 1.170A-17(b)(5), from memory). A dealer's price is no appraisal.",
  ],
  GB: ["United Kingdom: tax asks for the open-market value (Inheritance Tax Act 1984 s. 160, Taxation of Chargeable Gains Act 1992 s. 272; from memory)."],
};
