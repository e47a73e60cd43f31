// What measures and grades are worked out from: the part of a garment's content that tells them.
import {z} from "zod";
import {sizesSchema, stateSchema} from "../../state/model.ts";

export const measuredSubject = z.strictObject({
  name: z.string().max(200).default("the garment").describe("as problems call it"),
  type: z.string().max(200).default("").describe("trousers, jacket, shirt ...; decides the points of measure"),
  sizes: sizesSchema.nullable().default(null),
  state: stateSchema.nullable().default(null),
});
export type MeasuredSubject = z.output<typeof measuredSubject>;

interface WithSizes {
  readonly garment: {readonly garment: string; readonly type?: string};
  readonly sizes: MeasuredSubject["sizes"];
  readonly state: MeasuredSubject["state"];
}

/** A garment's content as such a subject. */
export const subjectOfContent = ({garment, sizes, state}: WithSizes): MeasuredSubject => ({name: `garment ${garment.garment}`, type: garment.type ?? "", sizes, state});
