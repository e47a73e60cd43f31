// ticking rack remove and ticking rack put-back.
import {putBackGarment, removeGarment} from "../../commands/rack/remove-garment.ts";
import {done, garmentNamed, withRackToChange, type RackFlags} from "./with-rack.ts";

export async function removeFromRack(names: readonly string[], flags: RackFlags): Promise<void> {
  for (const number of await each(removeGarment, names, flags)) process.stdout.write(`${number} is off the rack; its history stays, and ticking rack put-back ${number} hangs it there again.\n`);
}

export async function putBack(names: readonly string[], flags: RackFlags): Promise<void> {
  for (const number of await each(putBackGarment, names, flags)) process.stdout.write(`${number} hangs on the rack again.\n`);
}

/** All are looked for before the first is changed. */
function each(command: typeof removeGarment, names: readonly string[], flags: RackFlags): Promise<readonly string[]> {
  return withRackToChange(flags, false, async (rack) => {
    const records = [];
    for (const name of names) records.push(await garmentNamed(name, rack));
    for (const {id, rev} of records) await done(command, {id, base: rev}, rack);
    return records.map(({content}) => content.garment.garment);
  });
}
