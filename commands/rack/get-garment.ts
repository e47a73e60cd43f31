// Shows a garment as it is kept, removed or not.
import {z} from "zod";
import {recordSchema} from "../../store/model.ts";
import * as say from "./problems.ts";
import {rackCommand, unknown} from "./rack-command.ts";

export const getGarment = rackCommand({
  name: "garment.get",
  summary: "show a garment as it is kept",
  route: {method: "get", path: "/api/garments/{id}"},
  input: z.strictObject({id: recordSchema.shape.id}),
  output: recordSchema,
  async run({id}, {store}) {
    const found = await store.get(id);
    return found ? {answer: found} : unknown(say.noGarment(id));
  },
});
