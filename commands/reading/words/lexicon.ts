// Words on labels and the marks of the public book that they are: what stands there in capitals, and which value it shows.
// Marks that a book does not hold are left out; a book's own quoted words are added in quoted.ts.

/** One mark and the words that show it. */
export interface Entry {
  readonly mark: string;
  /** Value of a choice, several when the words leave them open, or "present". */
  readonly value: string | readonly string[];
  readonly phrases: readonly string[];
  /** Of words of one family that overlap the longest counts alone. */
  readonly family: string;
  /** Counts on labels that show a sign of the United States alone. */
  readonly us?: true;
}

const fibre = (mark: string, ...phrases: string[]): Entry => ({mark, value: "present", phrases, family: "fibre"});
const usFibre = (mark: string, ...phrases: string[]): Entry => ({...fibre(`us.fibre.iso-names.${mark}`, ...phrases), us: true});
const shown = (family: string, mark: string, ...phrases: string[]): Entry => ({mark, value: "present", phrases, family});
const value = (family: string, mark: string, id: string | readonly string[], ...phrases: string[]): Entry => ({mark, value: id, phrases, family});

const first = "us.fibre.generic-names-1960";
const later = "us.fibre.generic-names";
const union = "union.us.label.union";
const orders = "us.military.agency";

export const lexicon: readonly Entry[] = [
  // Fibres, by the names of the law and by older ones.
  fibre(`${first}.polyester`, "POLYESTER"), fibre(`${first}.acrylic`, "ACRYLIC"), fibre(`${first}.modacrylic`, "MODACRYLIC"), fibre(`${first}.spandex`, "SPANDEX"),
  fibre(`${first}.olefin`, "OLEFIN"), fibre(`${first}.saran`, "SARAN"), fibre(`${first}.vinyon`, "VINYON"), fibre(`${first}.vinal`, "VINAL"), fibre(`${first}.nytril`, "NYTRIL"),
  fibre(`${first}.azlon`, "AZLON"), fibre(`${first}.metallic`, "METALLIC"),
  fibre(`${later}.aramid`, "ARAMID"), fibre(`${later}.novoloid`, "NOVOLOID"), fibre(`${later}.anidex`, "ANIDEX"), fibre(`${later}.sulfar`, "SULFAR"), fibre(`${later}.lyocell`, "LYOCELL"),
  fibre(`${later}.elastoester`, "ELASTOESTER"), fibre(`${later}.melamine`, "MELAMINE"), fibre(`${later}.fluoropolymer`, "FLUOROPOLYMER"), fibre(`${later}.lastol`, "LASTOL"),
  fibre(`${later}.triexta`, "TRIEXTA"), fibre(`${later}.elasterell-p`, "ELASTERELL"), fibre(`${later}.pla`, "PLA"), fibre(`${later}.pbi`, "PBI"),
  usFibre("viscose", "VISCOSE"), usFibre("elastane", "ELASTANE"), usFibre("modal", "MODAL"), usFibre("cupro", "CUPRO"), usFibre("polyamide", "POLYAMIDE"),
  fibre("us.fibre.rayon.rayon", "RAYON"), fibre("us.fibre.rayon.acetate-apart", "ACETATE"), fibre("us.fibre.rayon.acetate-called-rayon", "ACETATE RAYON"), fibre("us.fibre.rayon.artificial-silk", "ARTIFICIAL SILK", "ART SILK"),
  fibre("us.fibre.bamboo.rayon-from-bamboo", "RAYON MADE FROM BAMBOO", "RAYON FROM BAMBOO", "VISCOSE MADE FROM BAMBOO", "VISCOSE FROM BAMBOO"), fibre("us.fibre.bamboo.plain", "BAMBOO"),
  fibre("material.cloth.fibre.nylon", "NYLON"), fibre("material.cloth.fibre.triacetate", "TRIACETATE"), fibre("material.cloth.fibre.microfibre", "MICROFIBER", "MICROFIBRE"), fibre("material.cloth.fibre.spandex", "ELASTANE", "ELASTHANNE", "ELASTHAN"),
  fibre("material.cloth.fibre.rayon", "VISCOSE", "VISKOSE"),
  fibre("eu.fibre.names.polylactide", "POLYLACTIDE"), fibre("eu.fibre.names.elastomultiester", "ELASTOMULTIESTER"), fibre("eu.fibre.names.elastolefin", "ELASTOLEFIN"),
  shown("animal", "eu.fibre.names.animal-parts", "NON-TEXTILE PARTS OF ANIMAL ORIGIN"),
  shown("wool", "us.wool.content.reprocessed", "REPROCESSED WOOL"), shown("wool", "us.wool.content.reused", "REUSED WOOL"), shown("wool", "us.wool.content.recycled", "RECYCLED WOOL"),
  // Finish and make, in words.
  shown("finish", "material.cloth.finish.preshrunk", "PRESHRUNK", "RESIDUAL SHRINKAGE", "SHRINKAGE LESS THAN", "SHRINKAGE CONTROLLED"), shown("finish", "material.cloth.finish.durable-press", "PERMANENT PRESS", "DURABLE PRESS"),
  shown("finish", "material.cloth.finish.mercerised", "MERCERIZED", "MERCERISED"),
  shown("slogan", "origin.line.wording.crafted-with-pride", "CRAFTED WITH PRIDE IN USA", "CRAFTED WITH PRIDE"),
  shown("parts", "origin.line.wording.assembled-of-us-components", "OF US COMPONENTS", "OF US MATERIALS", "OF USA COMPONENTS", "FROM US COMPONENTS"),
  value("indefinite", "uk.origin.imports.indefinite", "empire-made", "EMPIRE MADE"),
  // Unions and what they belong to.
  value("union", union, "ugwa", "UNITED GARMENT WORKERS OF AMERICA", "UNITED GARMENT WORKERS"), value("union", union, "ufcw", "UNITED FOOD AND COMMERCIAL WORKERS", "UFCW"),
  value("union", union, "acwa", "AMALGAMATED CLOTHING WORKERS OF AMERICA", "AMALGAMATED CLOTHING WORKERS"), value("union", union, "actwu", "AMALGAMATED CLOTHING AND TEXTILE WORKERS UNION", "AMALGAMATED CLOTHING AND TEXTILE WORKERS", "ACTWU"),
  value("union", union, "unite-here", "UNITE HERE"), value("union", union, "workers-united", "WORKERS UNITED"),
  value("union", union, ["ilgwu-before-1959", "ilgwu-round", "ilgwu-scalloped", "ilgwu-made-in-usa"], "INTERNATIONAL LADIES GARMENT WORKERS UNION", "LADIES GARMENT WORKERS", "ILGWU"),
  value("union", union, "utwa", "UNITED TEXTILE WORKERS OF AMERICA", "UNITED TEXTILE WORKERS"), value("union", union, "twua", "TEXTILE WORKERS UNION OF AMERICA"), value("union", union, "hatters", "UNITED HATTERS"),
  value("federation", "union.us.label.federation", "afl-cio", "AFL-CIO"), value("federation", "union.us.label.federation", "afl", "A.F. OF L.", "AMERICAN FEDERATION OF LABOR"), value("federation", "union.us.label.federation", "cio", "CONGRESS OF INDUSTRIAL ORGANIZATIONS"),
  // Codes, safety, registration.
  value("code", "us.code.label.kind", "consumers-league", "NATIONAL CONSUMERS LEAGUE"), value("code", "us.code.label.kind", "prosanis", "PROSANIS"), value("code", "us.code.label.kind", "blue-eagle", "NRA CODE", "WE DO OUR PART"),
  value("code", "us.code.label.kind", "recovery-board", "CONSUMERS PROTECTION LABEL"),
  shown("safety", "uk.safety.nightwear.keep-away-from-fire", "KEEP AWAY FROM FIRE"), shown("safety", "uk.safety.nightwear.low-flammability", "LOW FLAMMABILITY TO BS 5722", "LOW FLAMMABILITY"),
  shown("safety", "us.safety.children.flame-resistant", "FLAME RESISTANT"), shown("safety", "us.safety.children.fit-snugly", "FIT SNUGLY", "SNUG-FITTING NOT FLAME RESISTANT"),
  value("registered", "us.trademark.notice.words", "pat-off", "REG US PAT OFF", "REGISTERED US PATENT OFFICE"), value("registered", "us.trademark.notice.words", "pat-and-tm-off", "REG US PAT AND TM OFF", "REG US PAT TM OFF"),
  value("patent", "us.patent.notice.form", "pending", "PAT PENDING", "PATENT PENDING", "PAT PEND", "PAT APPLIED FOR", "PAT APPL FOR"),
  shown("zipper", "material.closure.zip.word-zipper", "ZIPPER"),
  shown("certificate", "international.certificate.marks.oeko-tex", "OEKO-TEX", "CONFIDENCE IN TEXTILES"), value("certificate", "international.certificate.marks.wool-symbol", "pure", "PURE NEW WOOL"),
  shown("certificate", "international.certificate.marks.gots", "GLOBAL ORGANIC TEXTILE STANDARD"), shown("certificate", "international.certificate.marks.grs", "GLOBAL RECYCLED STANDARD"), shown("certificate", "international.certificate.marks.fairtrade-cotton", "FAIRTRADE"),
  shown("ration", "us.war.orders.ceiling-price", "OPA CEILING PRICE", "CEILING PRICE"), value("utility", "uk.utility.marks.control", "cc41", "CC41"),
  shown("importer", "mexico.label.standard.importer-block", "IMPORTADO POR", "NOM-004", "RFC"), shown("conformity", "uk.safety.conformity.ukca", "UKCA"),
  // Contract labels.
  value("office", `${orders}.office`, "personnel-support-center", "DEFENSE PERSONNEL SUPPORT CENTER"), value("office", `${orders}.office`, "supply-center-philadelphia", "DEFENSE SUPPLY CENTER PHILADELPHIA"), value("office", `${orders}.office`, "troop-support", "DLA TROOP SUPPORT"),
  value("service", `${orders}.service`, "air-corps", "AIR CORPS"), value("service", `${orders}.service`, "army-air-forces", "ARMY AIR FORCES"), value("service", `${orders}.service`, "air-force", "USAF"),
];
