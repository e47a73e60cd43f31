// ticking rack show.
import {stringify} from "yaml";
import {printMoney} from "../../commands/rack/table/money-cell.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {garmentNamed, withStore, type RackFlags} from "./with-rack.ts";

export async function showGarment(name: string, flags: RackFlags & {readonly json?: boolean}): Promise<void> {
  const record = await withStore(flags, false, (open) => garmentNamed(name, open));
  if (flags.json) return printJson(record);
  const page = newPage();
  const {content: {garment, dating, place, standing, paid, asked, tags, photos}} = record;
  page.say(`${garment.garment}${garment.title ? ` · ${garment.title}` : ""}`, "strong");
  if (record.removed) page.say("Removed from the rack.", "odd");
  page.head("Dated");
  if (dating) {
    page.say(dating.sentence);
    page.say(`No earlier than ${dating.noEarlier}, no later than ${dating.noLater}; on ${dating.at.slice(0, 10)} by ${dating.books.map(({book, edition}) => `${book} ${edition}`).join(", ")}.`, "quiet");
  } else page.say("Not dated.");
  page.head("On the rack");
  const entries: readonly (readonly [string, string])[] = [
    ["standing", standing], ["place", place], ["paid", paid ? printMoney(paid) : ""], ["asked", asked ? printMoney(asked) : ""], ["tags", tags.join(", ")], ["photos", photos.map(photoWords).join(", ")],
    ["id", record.id], ["changed", `${record.changedAt.slice(0, 16).replace("T", " ")} UTC by ${record.changedBy}, step ${record.rev}`],
  ];
  for (const [entry, text] of entries) if (text !== "") page.item(`${entry.padEnd(10)}`, text);
  page.head("Seen", "as in a garment file");
  page.picture(stringify(garment, {lineWidth: 0}).trimEnd().split("\n"));
  printPage(page);
}

const photoWords = ({photo, place}: GarmentRecord["content"]["photos"][number]) => `${photo.slice(0, 12)}…${place ? ` (${place})` : ""}`;
