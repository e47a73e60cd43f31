// Draws the pictures of the guide into docs/guide/pictures: npm run pictures
import {writeFileSync} from "node:fs";
import {pictures} from "./picture/pictures.ts";

for (const [name, svg] of Object.entries(pictures())) writeFileSync(new URL(`../docs/guide/pictures/${name}`, import.meta.url), svg);
