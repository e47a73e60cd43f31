// Changes many garments in one step: all of them, or none.
import {z} from "zod";
import {contentSchema, recordSchema, type Content, type GarmentRecord} from "../../store/model.ts";
import type {Problem} from "../../engine/index.ts";
import {digitsOf} from "../../worth/index.ts";
import {unknownCurrency} from "../worth/problems.ts";
import * as say from "./problems.ts";
import {rackCommand, unfit} from "./rack-command.ts";

const {place, standing, asked, tags} = contentSchema.shape;
const mostTags = 40;
/** How often it is tried again when somebody saves one of the garments meanwhile. */
const mostTries = 4;

const changeSchema = z.strictObject({
  place: place.unwrap().optional(),
  standing: standing.unwrap().optional(),
  asked: asked.unwrap().optional(),
  addTags: tags.unwrap().optional(),
  removeTags: tags.unwrap().optional(),
});
type Change = z.output<typeof changeSchema>;

export const editMany = rackCommand({
  name: "rack.edit",
  summary: "change place, standing, price or tags of many garments in one step",
  route: {method: "post", path: "/api/rack/edit"},
  mostBytes: 4_000_000,
  input: z.strictObject({ids: z.array(recordSchema.shape.id).min(1).max(50_000), change: changeSchema}),
  output: z.strictObject({changed: z.number().int(), problems: z.array(z.unknown())}),
  async run({ids, change}, {store, who, now: at}) {
    if (Object.values(change).every((value) => value === undefined)) return unfit([say.changesNothing()]);
    const wanted = [...new Set(ids)];
    for (let tries = 0; tries < mostTries; tries++) {
      const found = await Promise.all(wanted.map((id) => store.get(id)));
      const missing = wanted.filter((_, i) => !found[i]);
      if (missing.length > 0) return {refused: "unknown", problems: missing.map(say.noGarment)};
      const edited = (found as GarmentRecord[]).map((record) => ({record, content: changed(record.content, change)}));
      const problems: Problem[] = edited.flatMap(({content}) => (content.tags.length > mostTags ? [say.tooManyTags(content.garment.garment, mostTags)] : []));
      if (change.asked && digitsOf(change.asked.currency) === null) problems.push(unknownCurrency("change.asked", change.asked.currency));
      if (problems.length > 0) return unfit(problems);
      const moved = edited.filter(({record, content}) => JSON.stringify(content) !== JSON.stringify(record.content));
      const saved = await store.saveAll(moved.map(({record: {id, rev}, content}) => ({id, base: rev, content, who, what: "changed with others", at})));
      if (saved.every((one) => one.saved)) return {answer: {changed: moved.length, problems: []}};
    }
    return {refused: "conflict", problems: [say.busyGarments()]};
  },
});

function changed(content: Content, {place: where, standing: stands, asked: price, addTags = [], removeTags = []}: Change): Content {
  return {
    ...content,
    place: where ?? content.place,
    standing: stands ?? content.standing,
    asked: price === undefined ? content.asked : price,
    tags: [...new Set([...content.tags, ...addTags])].filter((tag) => !removeTags.includes(tag)),
  };
}
