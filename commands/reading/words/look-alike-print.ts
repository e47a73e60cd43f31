// How much it costs to take one printed capital or figure for another, when words are looked for in what a reader made of a label.

/** Pairs that worn print is often mistaken in. Source: own judgement, and what the engine's table of look-alikes holds. */
const pairs = ["0O", "0D", "0Q", "OQ", "OD", "OC", "OG", "1I", "1L", "1T", "IL", "IT", "2Z", "3B", "38", "5S", "6G", "8B", "8S", "7T", "4A", "CG", "EF", "UV", "MN", "HN", "HM", "PR", "PF", "RK", "KX", "VY", "WM", "BR", "BE", "RB", "NW", "LI", "TF", "CE", "JI"];

const near = new Set(pairs.flatMap((pair) => [pair, pair[1]! + pair[0]!]));

/** Costs in characters: none for the same one, little for look-alikes, a whole one for anything else. Source: own choice. */
export const swapCost = (a: string, b: string) => (a === b ? 0 : near.has(a + b) ? 0.35 : 1);

/** A character that vanished, or one that is not there. Source: own choice. */
export const gapCost = 0.8;
