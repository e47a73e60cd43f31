// Which kind of garment a type is, for the drawing, the points of measure and the fit.

export const garmentKinds = ["trousers", "jacket", "shirt", "overalls", "sweatshirt"] as const;
export type GarmentKind = (typeof garmentKinds)[number];

/**
 * The kind by the first word of the type that fits; trousers where none does.
 * @example
 * kindOf("bib overalls") // -> "overalls"
 */
export function kindOf(type: string | undefined): GarmentKind {
  const words = (type ?? "").toLowerCase();
  if (/sweat|tee|t-shirt|jersey|knit|pullover/.test(words)) return "sweatshirt";
  if (/overall|dungaree|bib/.test(words)) return "overalls";
  if (/shirt|blouse/.test(words)) return "shirt";
  if (/jacket|coat|vest|waistcoat|parka|chore|blouson/.test(words)) return "jacket";
  return "trousers";
}

/** For people. */
export const kindNames: Readonly<Record<GarmentKind, string>> = {trousers: "trousers", jacket: "jacket", shirt: "shirt", overalls: "overalls", sweatshirt: "sweatshirt or tee"};
