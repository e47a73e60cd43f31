// ticking paper tags.
import {readSetting} from "../../commands/rack/read-setting.ts";
import {makeTag} from "../../paper/make.ts";
import {printTags, type TagOptions} from "../../paper/print.ts";
import type {Tag} from "../../paper/tag/tag.ts";
import {counted} from "../rack/counted.ts";
import {withRack} from "../rack/with-rack.ts";
import {chosen, type ChosenFlags} from "./chosen.ts";
import {progress} from "./progress.ts";
import {writePaper} from "./write.ts";

interface Flags extends ChosenFlags, TagOptions {
  readonly price: boolean;
  readonly out?: string;
}

export async function makeTags(words: readonly string[], flags: Flags): Promise<void> {
  await withRack(flags, false, async (rack) => {
    const records = await chosen(words, flags, rack);
    const told = progress("hang tags", records.length);
    const tags: Tag[] = [];
    for (const record of records) {
      tags.push(await makeTag(record, rack, {price: flags.price}));
      told.done(tags.length);
    }
    told.end();
    const out = flags.out ?? "hang-tags.pdf";
    writePaper(out, await printTags(tags, flags, {on: rack.now.slice(0, 10), author: (await readSetting(rack.store, "owner")).value.name}));
    process.stderr.write(`${counted(tags.length, "hang tag")} in ${out}.\n`);
  });
}
