// A printed sheet against the rack, its history, and files taken out of it.
import {expect, test} from "vitest";
import {checkCode} from "../../../paper/check-code.ts";
import {composeSheet} from "../../../paper/sheet/compose.ts";
import {gather} from "../../../paper/gather.ts";
import type {Rack} from "../../../commands/rack/rack.ts";
import type {Content, GarmentRecord} from "../../../store/model.ts";
import {contentOf, hung, newRack, now, today} from "../material.ts";

async function printed(record: GarmentRecord, rack: Rack) {
  const {material} = await gather(record, rack, {on: today});
  return composeSheet(material!, 2).code;
}

const changed = (record: GarmentRecord, content: Content, rack: Rack) => rack.store.save({id: record.id, base: record.rev, content, who: "owner", what: "changed", at: "2026-11-26T08:00:00.000Z"});

test("a sheet is the same as long as nothing it states changes, and true of its step afterwards, with what changed named", async () => {
  const rack = await newRack();
  const content = contentOf("0147");
  const [dated] = await rack.date([content.garment]);
  const record = await hung({...content, dating: dated!.dating!}, rack);
  const code = await printed(record, rack);
  expect((await checkCode({code: code.text}, rack)).answer).toMatchObject({result: "same", rev: 1, garment: {id: record.id, number: "0147"}, on: today});

  const {saved: moved} = await changed(record, {...record.content, place: "rail 9", standing: "for sale", tags: ["worn"]}, rack);
  expect((await checkCode({code: code.text}, rack)).answer).toMatchObject({result: "same", rev: 2});

  await changed(moved!, {...moved!.content, state: {...moved!.content.state!, flaws: []}}, rack);
  const {answer} = await checkCode({code: code.text}, rack);
  expect(answer).toMatchObject({result: "once", rev: 2, changed: ["flaws, wear and alterations"]});
  expect(answer!.words).toMatch(/step 2, on 2026-11-26\. Since then these have changed: flaws/);
});

test("the letters alone do when number and day are told, and not otherwise", async () => {
  const rack = await newRack();
  const {short} = await printed(await hung(contentOf("0147"), rack), rack);
  expect((await checkCode({code: short, number: "0147", on: today}, rack)).answer).toMatchObject({result: "same"});
  expect((await checkCode({code: short}, rack)).problems?.[0]?.code).toBe("paper/needs-garment");
  expect((await checkCode({code: short, number: "0147", on: "2026-11-24"}, rack)).answer).toMatchObject({result: "differs"});
});

test("a sheet printed before the garment was dated holds when it has been dated since", async () => {
  const rack = await newRack();
  const record = await hung(contentOf("0187"), rack);
  expect(record.content.dating).toBeNull();
  const code = await printed(record, rack);
  const [dated] = await rack.date([record.content.garment]);
  await changed(record, {...record.content, dating: dated!.dating!}, rack);
  expect((await checkCode({code: code.text}, rack)).answer).toMatchObject({result: "same"});
});

test("a file taken out of the rack is enough: a record, its content, or a whole export", async () => {
  const rack = await newRack();
  const content = contentOf("0147");
  const [dated] = await rack.date([content.garment]);
  const record = await hung({...content, dating: dated!.dating!}, rack);
  const code = await printed(record, rack);
  const elsewhere = {store: null, date: rack.date};
  for (const file of [record, record.content, [contentOf("0149"), record.content]]) expect((await checkCode({code: code.text, record: JSON.parse(JSON.stringify(file))}, elsewhere)).answer).toMatchObject({result: "same"});
  const forged = {...record.content, garment: {...record.content.garment, title: "Deadstock trousers"}};
  expect((await checkCode({code: code.text, record: forged}, elsewhere)).answer).toMatchObject({result: "differs"});
  expect(await checkCode({code: code.text, record: [contentOf("0149")]}, elsewhere)).toMatchObject({unknown: true, problems: [{code: "paper/no-such-garment"}]});
  expect((await checkCode({code: code.text, record: {garment: 7}}, elsewhere)).problems?.[0]?.code).toBe("paper/not-record");
  expect((await checkCode({code: "hello", record}, elsewhere)).problems?.[0]?.code).toBe("paper/not-code");
});

test("a sheet whose words were forged does not hold, nor does one of a garment that is not there", async () => {
  const rack = await newRack();
  const code = await printed(await hung(contentOf("0147"), rack), rack);
  const forged = code.text.replace(/f=(.)/, (_, first: string) => `f=${first === "A" ? "B" : "A"}`);
  expect((await checkCode({code: forged}, rack)).answer).toMatchObject({result: "differs"});
  expect((await checkCode({code: code.text.replace(today, "2026-11-01")}, rack)).answer).toMatchObject({result: "differs"});
  expect(await checkCode({code: code.text}, await newRack())).toMatchObject({unknown: true});
  expect(now).toContain(today);
});
