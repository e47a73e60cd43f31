// Says what a garment measures: every point as laid and all round, what does not hang together, and the tag against the tape.
import {z} from "zod";
import {otherWeight, type ClothWeight} from "../../state/cloth.ts";
import {kindOf, type GarmentKind} from "../../state/garment-kind.ts";
import {sayMm, toMm} from "../../state/length.ts";
import {sizesSchema} from "../../state/model.ts";
import {sizeDoubts, type SizeDoubt} from "../../state/plausible.ts";
import {measuredOf, pointsOf} from "../../state/point.ts";
import {oddSizes, tagChecks, type OddSize, type TagCheck} from "../../state/tag-check.ts";
import {command} from "../command.ts";
import {measuredSubject} from "./subject.ts";

export interface MeasuredPoint {
  readonly point: string;
  readonly name: string;
  readonly typed: string;
  readonly mm: number;
  /** All round, where it was laid flat. */
  readonly girthMm: number | null;
  /** "17 in laid flat, 34 in all round" */
  readonly says: string;
  readonly errorMm: number;
}

export interface MeasuredAnswer {
  readonly kind: GarmentKind;
  readonly points: readonly MeasuredPoint[];
  /** Points of the kind that nobody measured. */
  readonly open: readonly string[];
  readonly doubts: readonly SizeDoubt[];
  readonly tag: readonly TagCheck[];
  readonly odd: readonly OddSize[];
  readonly cloth: {readonly given: ClothWeight; readonly other: ClothWeight} | null;
}

export const measureGarment = command({
  name: "garment.sizes",
  summary: "say what a garment measures, and whether it hangs together and with its tag",
  input: z.strictObject({of: measuredSubject}),
  run: ({of: {type, sizes, state}}): {answer: MeasuredAnswer} => {
    const kind = kindOf(type);
    const given = sizes ?? sizesSchema.parse({});
    const measured = measuredOf(kind, given);
    const tag = tagChecks(kind, given, state);
    return {
      answer: {
        kind,
        points: measured.map(({point, measure, length, whole, errorMm}) => ({
          point: point.id, name: point.name, typed: measure.length.typed, mm: toMm(length), girthMm: point.flat ? toMm(whole) : null,
          says: point.flat ? `${sayMm(length.mm, length.unit)} laid flat, ${sayMm(whole.mm, length.unit)} all round` : sayMm(length.mm, length.unit), errorMm,
        })),
        open: pointsOf(kind).filter(({id}) => !measured.some(({point}) => point.id === id)).map(({name}) => name),
        doubts: sizeDoubts(kind, given),
        tag,
        odd: oddSizes(tag),
        cloth: given.cloth && {given: given.cloth, other: otherWeight(given.cloth)},
      },
    };
  },
  json: (answer: MeasuredAnswer) => answer,
});
