// Puts a new garment on the rack.
import {z} from "zod";
import {contentSchema, recordSchema} from "../../store/model.ts";
import {rackCommand} from "./rack-command.ts";
import {saveOne} from "./save.ts";

export const addGarment = rackCommand({
  name: "garment.add",
  summary: "put a new garment on the rack",
  route: {method: "post", path: "/api/garments", status: 201},
  input: z.strictObject({content: contentSchema}),
  output: recordSchema,
  run: ({content}, rack) => saveOne(rack, {id: null, base: 0, content, what: "added"}),
});
