// Takes a garment off the rack, and puts it back; its history stays in either case.
import {z} from "zod";
import {recordSchema, type GarmentRecord} from "../../store/model.ts";
import * as say from "./problems.ts";
import type {Rack} from "./rack.ts";
import {rackCommand, unknown, type Reply} from "./rack-command.ts";
import {replyOf} from "./save.ts";

const {id, rev} = recordSchema.shape;

export const removeGarment = rackCommand({
  name: "garment.remove",
  summary: "take a garment off the rack; its history stays",
  route: {method: "delete", path: "/api/garments/{id}"},
  input: z.strictObject({id, base: rev}),
  output: recordSchema,
  run: (input, rack) => hang(input, rack, true),
});

export const putBackGarment = rackCommand({
  name: "garment.put-back",
  summary: "put a removed garment back on the rack",
  route: {method: "post", path: "/api/garments/{id}/put-back"},
  input: z.strictObject({id, base: rev}),
  output: recordSchema,
  run: (input, rack) => hang(input, rack, false),
});

async function hang({id, base}: {readonly id: string; readonly base: number}, {store, who, now: at}: Rack, removed: boolean): Promise<Reply<GarmentRecord>> {
  const found = await store.get(id);
  if (!found) return unknown(say.noGarment(id));
  if (found.rev === base && found.removed === removed) return {answer: found};
  return replyOf(await store.save({id, base, content: found.content, removed, who, what: removed ? "removed" : "put back", at}), id);
}
