// Saves a change to a garment, on top of the revision it was made from.
import {z} from "zod";
import {contentSchema, recordSchema, stepSchema} from "../../store/model.ts";
import {rackCommand} from "./rack-command.ts";
import {saveOne} from "./save.ts";

export const changeGarment = rackCommand({
  name: "garment.change",
  summary: "save a change to a garment; refused when somebody saved in between",
  route: {method: "put", path: "/api/garments/{id}"},
  input: z.strictObject({
    id: recordSchema.shape.id,
    base: recordSchema.shape.rev.describe("the revision that was changed"),
    content: contentSchema,
    what: stepSchema.shape.what.min(1).default("changed"),
  }),
  output: recordSchema,
  run: ({id, base, content, what}, rack) => saveOne(rack, {id, base, content, what}),
});
