// What the size on a garment's own tag says: waist and length, a collar, a chest, or a letter.
import type {GarmentKind} from "./garment-kind.ts";
import type {TagSize} from "./model.ts";

/** Chest girth of the body in centimetres that a letter is for; EN 13402-3 as remembered: from memory, not looked up. */
export const letterTable: Readonly<Record<string, readonly [low: number, high: number]>> = {
  XS: [78, 86], S: [86, 94], M: [94, 102], L: [102, 110], XL: [110, 118], XXL: [118, 129], "3XL": [129, 141],
};

const words: Readonly<Record<string, string>> = {small: "S", medium: "M", large: "L", "x-large": "XL", "extra large": "XL"};

/** The letter of a size, spelled out or not. */
export function letterOf(text: string): string | null {
  const plain = text.trim().toLowerCase();
  const letter = words[plain] ?? plain.toUpperCase().replace(/^2XL$/, "XXL").replace(/^XXXL$/, "3XL");
  return Object.hasOwn(letterTable, letter) ? letter : null;
}

const nothing = {waist: null, inseam: null, chest: null, neck: null};

/**
 * Reads a tag as inches. What it cannot read stays as text alone.
 * Old tags say what they mean only by the garment: a lone 34 is the waist of trousers and overalls, the chest of a jacket, the collar of a shirt when it is that small.
 * @example
 * readTagSize("W 34 L 32", "trousers").inseam // -> 32
 */
export function readTagSize(text: string, kind: GarmentKind): TagSize {
  const plain = text.replace(/[½¼¾]/g, (sign) => ({"½": ".5", "¼": ".25", "¾": ".75"})[sign]!).replace(/(\d)[\s-]+1\/2/g, "$1.5").replace(/(\d)[\s-]+1\/4/g, "$1.25").replace(/(\d)[\s-]+3\/4/g, "$1.75").toUpperCase();
  const [first, second] = [...plain.matchAll(/\d{1,3}(?:\.\d+)?/g)].map(([figure]) => Number(figure));
  const isLeg = kind === "trousers" || kind === "overalls";
  if (first === undefined || /CM|YEARS|AGE/.test(plain) || first > 70) return {text, ...nothing};
  if (isLeg) return {text, ...nothing, waist: within(first, 20, 66), inseam: second === undefined ? null : within(second, 20, 40)};
  if (kind === "shirt" && first <= 22) return {text, ...nothing, neck: within(first, 12, 22)};
  return {text, ...nothing, chest: within(first, 26, 66)};
}

const within = (value: number, low: number, high: number) => (value >= low && value <= high ? value : null);
