// Kinds that an owner adds to the rule get an id from their name.

/**
 * @param taken  ids that stand in the rule already
 * @example
 * kindFor("Oil stain", ["stain"]) // -> "oil-stain"
 */
export function kindFor(name: string, taken: readonly string[]): string {
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^[^a-z]+|-+$/g, "").slice(0, 50).replace(/-+$/, "") || "kind";
  for (let i = 1; ; i++) {
    const kind = i === 1 ? plain : `${plain}-${i}`;
    if (!taken.includes(kind)) return kind;
  }
}

/** A list with one entry changed, or taken out for null. */
export const withEntry = <T>(list: readonly T[], index: number, entry: T | null): T[] => (entry === null ? list.filter((_, i) => i !== index) : list.map((one, i) => (i === index ? entry : one)));
