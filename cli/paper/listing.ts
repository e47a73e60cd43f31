// ticking paper listing.
import type {Form} from "../../commands/paper/choices.ts";
import {makeListing} from "../../paper/make.ts";
import {orMend} from "../ending.ts";
import {counted} from "../rack/counted.ts";
import {withRack} from "../rack/with-rack.ts";
import {chosen, type ChosenFlags} from "./chosen.ts";
import {progress} from "./progress.ts";
import {writePaper} from "./write.ts";

interface Flags extends ChosenFlags {
  readonly form: Form;
  readonly out?: string;
}

export async function writeListings(words: readonly string[], flags: Flags): Promise<void> {
  await withRack(flags, false, async (rack) => {
    const records = await chosen(words, flags, rack);
    const told = progress("listings", records.length);
    const texts: string[] = [];
    for (const record of records) {
      const {made, problems} = await makeListing(record, rack, {on: rack.now.slice(0, 10), form: flags.form});
      texts.push(orMend(problems ? {problems} : {answer: made}));
      told.done(texts.length);
    }
    told.end();
    const text = flags.form === "json" && texts.length > 1 ? `[\n${texts.map((one) => one.trim()).join(",\n")}\n]\n` : texts.join("\n---\n\n");
    if (flags.out === undefined) return void process.stdout.write(text);
    writePaper(flags.out, text);
    process.stderr.write(`${counted(texts.length, "listing")} in ${flags.out}.\n`);
  });
}
