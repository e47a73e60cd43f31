// The shop of the demo as the text of its file: a line a sale and a line a garment.
import {inventedLooks} from "./invented-looks.ts";
import {inventedSales} from "./invented-sales.ts";
import {inventedStories} from "./invented-stories.ts";

export function demoShopText(): string {
  const sales = inventedSales().map((sale) => JSON.stringify(sale));
  const looks = inventedLooks();
  const garments = Object.entries(inventedStories()).map(([number, story]) => `${JSON.stringify(number)}: ${JSON.stringify({...story, ...looks[number]})}`);
  return `{\n"about": "Everything here is invented for the demo: makers, prices, sales, states.",\n"garments": {\n${garments.join(",\n")}\n},\n"sales": [\n${sales.join(",\n")}\n]\n}\n`;
}
