// How fast papers are made: one dating sheet, five hundred in one document, tags, a wall chart; the dating of garments told apart, as that is the engine's time.
import {examineJson} from "../commands/rack/examine-json.ts";
import {datingOf} from "../commands/rack/dating.ts";
import {makeWorld} from "../commands/world.ts";
import {printChart, printSheets, printTags, sheetPress} from "../paper/print.ts";
import {composeSheet} from "../paper/sheet/compose.ts";
import type {Material} from "../paper/sheet/material.ts";
import {composeTag} from "../paper/tag/tag.ts";
import {shippedBooks} from "../rulebooks/load.ts";
import {defaultRule} from "../state/default-rule.ts";
import {gradeOf} from "../state/grade.ts";
import {contentOf, photos as photosOf, rich, today} from "../test/paper/material.ts";
import type {Line} from "./line.ts";
import {quantile} from "./measure.ts";
import {month} from "../engine/index.ts";

const numbers = ["0101", "0102", "0147", "0149", "0150", "0152", "0158", "0160", "0187", "0403"];
const many = 500;
const options = {on: today, author: "bench"};

export async function measurePaper(rounds: number): Promise<Line[]> {
  const books = shippedBooks().books!;
  const world = makeWorld(books, month(2026, 11));
  const photos = await photosOf();
  const dated: number[] = [];
  const materials = numbers.map((number): Material => {
    const content = contentOf(number, rich);
    examineJson({garment: content.garment, trace: false}, world);
    const start = performance.now();
    const {answer} = examineJson({garment: content.garment, trace: false}, world);
    dated.push(performance.now() - start);
    const dating = datingOf(world.examiner().examine(content.garment).finding!, books, `${today}T12:00:00.000Z`);
    return {id: `bench${number}garment`, content: {...content, dating}, finding: answer!, dating, books, owner: {name: "Tannery Row", country: "US", address: []}, rule: defaultRule, graded: gradeOf(content.state!, defaultRule), on: today, worth: null};
  });

  const alone: number[] = [];
  for (let round = 0; round <= rounds; round++) {
    for (const material of materials) {
      const start = performance.now();
      await printSheets([{sheet: composeSheet(material, 3), photos}], "a4", options);
      if (round > 0) alone.push(performance.now() - start);
    }
  }
  const together = await timed(async () => {
    const press = sheetPress("bench", "a4", options);
    for (let i = 0; i < many; i++) press.add(composeSheet(materials[i % materials.length]!, 3), photos);
    await press.end();
  });
  const tags = await timed(() => printTags(Array.from({length: many}, (_, i) => composeTag(materials[i % materials.length]!.content, {shop: "Tannery Row", grade: "good", price: true})), {format: "hand", code: "qr", size: "a4"}, options));
  const chart = await timed(() => printChart(books.find(({kind}) => kind === "maker")!, month(2026, 11), "a2", options));
  const perGarment = quantile(dated, 0.5);
  return [
    {name: "one dating sheet from its finding, median", value: quantile(alone, 0.5), unit: "ms", most: 400},
    {name: "one dating sheet from its finding, 95 of 100", value: quantile(alone, 0.95), unit: "ms", most: 400},
    {name: `${many} dating sheets from their findings`, value: together / 1000, unit: "s", most: 60},
    {name: "finding of a garment, warm, median (engine)", value: perGarment, unit: "ms"},
    {name: `${many} dating sheets, findings included, reckoned`, value: (together + many * perGarment) / 1000, unit: "s", most: 60},
    {name: `${many} hang tags`, value: tags / 1000, unit: "s"},
    {name: "a wall chart on A2", value: chart, unit: "ms"},
  ];
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
