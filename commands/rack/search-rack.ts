// Finds garments on the rack.
import {rackPageSchema, rackQuerySchema} from "../../store/model.ts";
import {rackCommand} from "./rack-command.ts";

export const searchRack = rackCommand({
  name: "rack.search",
  summary: "find garments by words, codes, date, maker, place and price",
  route: {method: "get", path: "/api/rack"},
  input: rackQuerySchema,
  output: rackPageSchema,
  run: async (query, {store}) => ({answer: await store.search(query)}),
});
