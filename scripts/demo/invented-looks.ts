// Invents what some of the demo's garments measure and the state they are in, as their stories of wear and mending go.
import {kindOf} from "../../state/garment-kind.ts";
import {noteFlaw} from "../../commands/state/note-flaw.ts";
import {sizesSchema, stateSchema, type Sizes, type State} from "../../state/model.ts";
import {placeAt} from "../../state/place.ts";
import {readTagSize} from "../../state/tag-size.ts";

/** Points and lengths in inches as typed. */
interface Look {
  readonly type: string;
  readonly tag: string;
  readonly laid: Readonly<Record<string, string>>;
  readonly ounces?: number;
  readonly wear: State["wear"];
  readonly clean: State["clean"];
  /** In words; where on its side's drawing. */
  readonly flaws: readonly (readonly [words: string, x: number, y: number])[];
  readonly altered?: readonly string[];
  readonly missing?: readonly string[];
  readonly fading?: readonly string[];
}

const looks: Readonly<Record<string, Look>> = {
  "0149": {type: "trousers", tag: "W 32 L 34", laid: {waist: "15 3/4", hip: "19 1/2", "front-rise": "10 3/4", "back-rise": "14 1/4", thigh: "11 1/2", knee: "8 1/2", hem: "7 3/4", inseam: "32 1/2", outseam: "42 3/4"}, ounces: 14, wear: "even", clean: "washed", flaws: [["slight stain at the left thigh", 0.69, 0.45]], fading: ["whiskers", "honeycombs"]},
  "0150": {type: "trousers", tag: "W 32 L 34", laid: {waist: "16", hip: "19 3/4", "front-rise": "10", thigh: "11 1/4", knee: "9 1/2", hem: "11", inseam: "33 3/4", outseam: "43 1/4"}, wear: "light", clean: "washed", flaws: [["faulty zip at the fly, mended", 0.5, 0.2]]},
  "0155": {type: "trousers", tag: "W 34 L 34", laid: {waist: "17", hip: "21", "front-rise": "11 1/2", thigh: "12 1/2", knee: "9", hem: "8 1/4", inseam: "29", outseam: "40"}, ounces: 14, wear: "even", clean: "washed", flaws: [["fraying at the left hem", 0.7, 0.9]], altered: ["shortened-hem"]},
  "0158": {type: "trousers", tag: "W 36 L 30", laid: {waist: "18", hip: "22 1/4", "front-rise": "11 3/4", thigh: "13", knee: "9 1/2", hem: "8 3/4", inseam: "30", outseam: "41 1/4"}, wear: "light", clean: "washed", flaws: []},
  "0160": {type: "trousers", tag: "W 33 L 33", laid: {waist: "16", hip: "20", "front-rise": "11", thigh: "12", knee: "8 3/4", hem: "8", inseam: "31 1/4", outseam: "42"}, ounces: 13.5, wear: "strong", clean: "washed", flaws: [["heavy hole at the right knee, mended", 0.28, 0.66], ["thin cloth at the seat", 0.5, 0.33]], missing: ["belt-loop"], fading: ["honeycombs", "stacks"]},
  "0183": {type: "trousers", tag: "31/34", laid: {waist: "15 1/2", hip: "19 1/4", "front-rise": "10 1/2", thigh: "11 1/4", knee: "8 1/4", hem: "7 1/2", inseam: "33 1/2", outseam: "43 1/2"}, wear: "light", clean: "clean", flaws: [["slight fraying at the right hem", 0.3, 0.9]]},
  "0303": {type: "overalls", tag: "40", laid: {"bib-width": "10", "bib-height": "11", waist: "20", hip: "22", "front-rise": "12", thigh: "13 1/2", knee: "10", hem: "9 1/4", inseam: "30", outseam: "41"}, wear: "strong", clean: "washed", flaws: [["paint at the left knee", 0.71, 0.7], ["tear at the pocket, mended", 0.72, 0.49], ["rust mark at the bib", 0.5, 0.3]], missing: ["button"]},
  "0319": {type: "jacket", tag: "42", laid: {chest: "23", waist: "22", hem: "21 1/2", shoulder: "19", sleeve: "24 1/2", cuff: "4 3/4", length: "26"}, wear: "even", clean: "washed", flaws: [["fraying at the right cuff", 0.13, 0.54]]},
  "0402": {type: "trousers", tag: "", laid: {waist: "17 1/2", hip: "21 3/4", "front-rise": "12", thigh: "13", hem: "9 1/2", inseam: "31", outseam: "42 1/2"}, wear: "none", clean: "unworn with tags", flaws: []},
};

/** Sizes and state by the number of the garment. */
export function inventedLooks(): Readonly<Record<string, {readonly sizes: Sizes; readonly state: State}>> {
  return Object.fromEntries(Object.entries(looks).map(([number, look]) => [number, {sizes: sizesOf(look), state: stateOf(look)}]));
}

function sizesOf({type, tag, laid, ounces}: Look): Sizes {
  return sizesSchema.parse({
    measures: Object.entries(laid).map(([point, typed]) => ({point, length: {typed, unit: "in"}})),
    tag: tag === "" ? null : readTagSize(tag, kindOf(type)),
    cloth: ounces === undefined ? null : {weight: ounces, unit: "oz/yd2"},
  });
}

function stateOf({type, wear, clean, flaws, altered = [], missing = [], fading = []}: Look): State {
  return stateSchema.parse({
    flaws: flaws.map(([words, x, y]) => {
      const {answer, problems} = noteFlaw(words);
      if (problems) throw new Error(problems.map(({what}) => what).join("; "));
      return {...answer, place: placeAt(kindOf(type), answer.side, x, y), x, y};
    }),
    wear, clean, missing, fading,
    alterations: altered.map((kind) => ({kind})),
  });
}
