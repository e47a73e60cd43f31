// Cautions as data: short, with the law or the authority behind each and how it was seen. They inform and defer to local law; they are no legal advice.
export interface Source {
  readonly title: string;
  /** How it was seen; part: partly seen in the source. */
  readonly how: "read" | "part" | "memory";
}

export interface CautionLine {
  readonly id: string;
  /** Of one topic only the lines for the owner's country are shown; those for anywhere when it has none. */
  readonly topic: "estimate" | "authenticity" | "appraisal" | "label" | "handling" | "smell" | "mould" | "green" | "celluloid" | "fur" | "silk" | "heat" | "dye" | "nightwear" | "child" | "cord";
  readonly says: string;
  readonly source: Source | null;
  /** ISO 3166-1; "EU" stands for its member states; null: anywhere. */
  readonly countries: readonly string[] | null;
  /** All of it must hold; nothing: always. */
  readonly when: {
    readonly child?: true;
    readonly nightwear?: true;
    readonly label?: "gone or changed";
    readonly clean?: "smells";
    readonly flaw?: string;
    /** One of these words in what is written of the garment. */
    readonly words?: readonly string[];
    /** It can have been made in these years. */
    readonly from?: number;
    readonly until?: number;
  };
}

export const cautionTable: readonly CautionLine[] = [
  {id: "estimate", topic: "estimate", says: "Date, grade and price are estimates from what was seen and noted, not a certified appraisal.", source: null, countries: null, when: {}},
  {id: "authenticity", topic: "authenticity", says: "No guarantee of authenticity: marks can be copied, moved and misread.", source: null, countries: null, when: {}},
  {id: "appraisal-us", topic: "appraisal", says: "For tax, insurance or an estate ask a qualified appraiser who has no part in the sale: the tax authority takes no dealer's price for a qualified appraisal.", source: {title: "26 U.S.C. 170(f)(11); 26 CFR 1.170A-17; Form 8283", how: "part"}, countries: ["US"], when: {}},
  {id: "appraisal-uk", topic: "appraisal", says: "For tax or probate the open-market value counts: ask a qualified valuer.", source: {title: "IHTA 1984 s. 160; TCGA 1992 s. 272", how: "memory"}, countries: ["GB"], when: {}},
  {id: "appraisal", topic: "appraisal", says: "For tax, insurance or an estate ask an appraiser or valuer who is qualified where you are.", source: null, countries: null, when: {}},
  {id: "label-us", topic: "label", says: "A required fibre label may not be taken out before the sale to the final buyer; who puts another in its place must give the same facts and their own name or number, and keep records for three years. Sewing in another maker's label to pass it off is unlawful.", source: {title: "15 U.S.C. 70c, 70d; 15 U.S.C. 1125(a)", how: "part"}, countries: ["US"], when: {label: "gone or changed"}},
  {id: "label", topic: "label", says: "Do not remove or replace labels before a sale, and say so where one is gone: what fibres and origin it claims must be true. Local law decides.", source: null, countries: null, when: {label: "gone or changed"}},
  {id: "handling", topic: "handling", says: "Old cloth, dyes and metal parts can carry mould, poisons and lead: air it before handling, wash your hands, keep it from small children.", source: {title: "conservation practice", how: "memory"}, countries: null, when: {}},
  {id: "moth-balls", topic: "smell", says: "A strong smell of moth-balls is naphthalene or paradichlorobenzene, both pesticides: air and wash it, and never put it on a baby untreated.", source: {title: "US EPA; UF/IFAS Extension PI289", how: "read"}, countries: null, when: {clean: "smells"}},
  {id: "mould", topic: "mould", says: "Mould: bag it, dry it, brush it outdoors with a mask on, and keep it away from other stock.", source: {title: "conservation practice; EPA mould guidance", how: "memory"}, countries: null, when: {flaw: "mould-spots"}},
  {id: "arsenic", topic: "green", says: "Bright green cloth or trim of the nineteenth century can hold arsenic: treat it as poisonous unless tested.", source: {title: "history of pigments", how: "memory"}, countries: null, when: {until: 1905}},
  {id: "celluloid", topic: "celluloid", says: "Early plastic buttons and collars can be celluloid: it burns fast and decays; keep it from heat.", source: {title: "conservation literature", how: "memory"}, countries: null, when: {words: ["celluloid"], until: 1960}},
  {id: "silk", topic: "silk", says: "Silk up to about 1938 was often weighted with tin or lead salts and splits: lay it flat, do not wash it.", source: {title: "conservation literature", how: "memory"}, countries: null, when: {words: ["silk"], until: 1945}},
  {id: "fur", topic: "fur", says: "Fur, feathers, ivory and tortoiseshell of protected animals may not be sold or sent freely, however old: ask before you do.", source: {title: "CITES; in the US 16 U.S.C. 703-712 and 1361 ff.", how: "part"}, countries: null, when: {words: ["fur", "feather", "feathers", "seal", "sealskin", "ivory", "tortoiseshell"]}},
  {id: "asbestos", topic: "heat", says: "Old clothing against heat may hold asbestos: do not shake, wear or sell it; ask the authority where you are.", source: {title: "EPA and HSE guidance on asbestos", how: "memory"}, countries: null, when: {words: ["asbestos", "foundry", "welder", "welding", "firefighter", "fireman", "heat-proof", "furnace"], until: 1990}},
  {id: "azo", topic: "dye", says: "Goods from before September 2003 were not tested against the limits on azo dyes.", source: {title: "Directive 2002/61/EC; REACH Annex XVII", how: "part"}, countries: ["EU"], when: {until: 2003}},
  {id: "nightwear-us", topic: "nightwear", says: "Children's sleepwear has had to resist flames since 1972 (sizes 0 to 6X) and 1975 (7 to 14): older or unlabelled pieces may not be sold as sleepwear.", source: {title: "16 CFR 1615 and 1616", how: "read"}, countries: ["US"], when: {child: true, nightwear: true}},
  {id: "tris-us", topic: "nightwear", says: "Much children's sleepwear of 1973 to 1977 carries the flame retardant Tris, banned in April 1977: neither sell it nor let a child wear it.", source: {title: "CPSC release 77-030", how: "part"}, countries: ["US"], when: {child: true, nightwear: true, from: 1972, until: 1978}},
  {id: "nightwear-uk", topic: "nightwear", says: "Nightwear must meet the flammability test or carry its warning (since March 1987; children's nightdresses earlier): old pieces may not be sold for wear.", source: {title: "Nightwear (Safety) Regulations 1985, SI 1985/2043", how: "read"}, countries: ["GB"], when: {nightwear: true}},
  {id: "nightwear", topic: "nightwear", says: "Old children's nightwear may not meet today's law on flammability: ask the authority where you are before selling or giving it on.", source: null, countries: null, when: {child: true, nightwear: true}},
  {id: "child-us", topic: "child", says: "Used children's goods need no new certificate, but none may be sold over the limits on lead (100 ppm in parts, 90 ppm in paint) or after a recall: old snaps, zips and prints are the usual culprits.", source: {title: "15 U.S.C. 1278a; CPSIA ss. 101-102; CPSC release 09-086", how: "read"}, countries: ["US"], when: {child: true}},
  {id: "child", topic: "child", says: "Children's clothes must be safe by today's law when they are sold: lead and nickel in snaps and zips, loose buttons, flammable pile. Ask the authority where you are.", source: null, countries: null, when: {child: true}},
  {id: "cord-us", topic: "cord", says: "Cords at hood and neck of small children's coats and tops count as a hazard: take them out before selling.", source: {title: "16 CFR 1120.3(b); ASTM F1816-97", how: "part"}, countries: ["US"], when: {child: true, words: ["hood", "hooded", "parka", "anorak", "jacket", "coat", "sweatshirt"]}},
  {id: "cord", topic: "cord", says: "Cords at hood and neck of small children's clothes can strangle: local law may forbid selling them so.", source: {title: "EN 14682", how: "memory"}, countries: null, when: {child: true, words: ["hood", "hooded", "parka", "anorak", "jacket", "coat", "sweatshirt"]}},
];
