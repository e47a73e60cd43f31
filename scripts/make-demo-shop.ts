// Writes rulebooks/demo/shop.json, the invented sales and prices of the demo: node scripts/run.mjs scripts/make-demo-shop.ts
import {writeFileSync} from "node:fs";
import {demoShopText} from "./demo/shop-text.ts";

writeFileSync(new URL("../rulebooks/demo/shop.json", import.meta.url), demoShopText());
