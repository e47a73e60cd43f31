// The history of a garment, and going back to any step of it.
import {z} from "zod";
import {recordSchema, stepSchema} from "../../store/model.ts";
import * as say from "./problems.ts";
import {rackCommand, unknown} from "./rack-command.ts";
import {replyOf} from "./save.ts";

const {id, rev} = recordSchema.shape;

export const garmentHistory = rackCommand({
  name: "garment.history",
  summary: "show who changed what about a garment, and when",
  route: {method: "get", path: "/api/garments/{id}/history"},
  input: z.strictObject({id}),
  output: z.array(stepSchema),
  async run({id: garment}, {store}) {
    const steps = await store.history(garment);
    return steps.length > 0 ? {answer: steps} : unknown(say.noGarment(garment));
  },
});

/** The content of an earlier step becomes a new step, dating and all: nothing in between is lost. */
export const undoGarment = rackCommand({
  name: "garment.undo",
  summary: "go back to an earlier step of a garment's history",
  route: {method: "post", path: "/api/garments/{id}/undo"},
  input: z.strictObject({id, base: rev.describe("the revision that stands now"), rev: rev.describe("the step to go back to")}),
  output: recordSchema,
  async run({id: garment, base, rev: wanted}, {store, who, now: at}) {
    const steps = await store.history(garment);
    if (steps.length === 0) return unknown(say.noGarment(garment));
    const step = steps.find((one) => one.rev === wanted);
    if (!step) return unknown(say.noStep(wanted));
    return replyOf(await store.save({id: garment, base, content: step.content, removed: step.removed, who, what: `undone to step ${wanted}`, at}), garment);
  },
});
