// ticking rack history and ticking rack undo.
import {undoGarment} from "../../commands/rack/garment-history.ts";
import {NeedsMending} from "../ending.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {sayDated} from "./list.ts";
import {notStep} from "./problems.ts";
import {done, garmentNamed, withRackToChange, withStore, type RackFlags} from "./with-rack.ts";

export async function printHistory(name: string, flags: RackFlags & {readonly json?: boolean}): Promise<void> {
  const steps = await withStore(flags, false, async (open) => open.store.history((await garmentNamed(name, open)).id));
  if (flags.json) return printJson(steps);
  const page = newPage();
  const room = String(steps.length).length + 2;
  for (const {rev, at, who, what, content} of steps) {
    page.item(String(rev).padEnd(room), `${at.slice(0, 16).replace("T", " ")} UTC · ${who} · ${what}`);
    page.item(" ".repeat(room), [sayDated(content), content.place, content.standing].filter((text) => text !== "").join(" · "), "quiet");
  }
  printPage(page);
}

export async function undoTo(name: string, step: string, flags: RackFlags): Promise<void> {
  if (!/^[1-9]\d{0,8}$/.test(step)) throw new NeedsMending([notStep(step)]);
  const record = await withRackToChange(flags, false, async (rack) => {
    const {id, rev} = await garmentNamed(name, rack);
    return done(undoGarment, {id, base: rev, rev: Number(step)}, rack);
  });
  process.stdout.write(`${record.content.garment.garment} is as it was at step ${step}; that is step ${record.rev} now, and nothing in between is lost.\n`);
}
