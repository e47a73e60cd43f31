// Saves what was noted of a garment on the rack, as any change is saved.
import {changeGarment} from "../../commands/rack/change-garment.ts";
import {manyGarments, notOnRack} from "../../commands/state/problems.ts";
import type {Content} from "../../store/model.ts";
import {NeedsMending} from "../ending.ts";
import {done, garmentNamed, withRackToChange, type RackFlags} from "../rack/with-rack.ts";
import {existsSync} from "node:fs";

export async function note(names: readonly string[], flags: RackFlags, change: (content: Content) => Partial<Content>, what: string): Promise<void> {
  if (names.length > 1) throw new NeedsMending([manyGarments(names.join(", "))]);
  if (existsSync(names[0]!)) throw new NeedsMending([notOnRack(names[0]!)]);
  await withRackToChange(flags, false, async (rack) => {
    const {id, rev, content} = await garmentNamed(names[0]!, rack);
    await done(changeGarment, {id, base: rev, content: {...content, ...change(content)}, what}, rack);
  });
}
