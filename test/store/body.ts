// Contents of garments for the tests of what keeps them.
import {contentSchema, type Content} from "../../store/model.ts";

export const at = "2026-06-01T10:00:00.000Z";

/** A content with what matters to a test; the rest as the schema fills it in. */
export function content(number: string, more: Record<string, unknown> = {}, saw: Record<string, unknown> = {}): Content {
  return contentSchema.parse({garment: {garment: number, saw}, ...more});
}

export const dated = (shares: readonly number[], first = 1966, more: Record<string, unknown> = {}) => ({
  at, books: [{book: "public", edition: 1}], kind: "one date", words: "March 1968", sentence: "Most likely March 1968", sureness: "sure", probability: 0.9, best: "1968-03",
  noEarlier: "1967-01", noLater: "1969-12", maker: "marrowfield", plant: "21", odd: 0, years: {first, shares}, ...more,
});
