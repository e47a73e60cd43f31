// Writes docs/reference from source and refreshes the printed answers in README.md and the guide: npm run docs
import {mkdirSync, readdirSync, rmSync, writeFileSync} from "node:fs";
import {refreshed, withAnswers} from "./page/answers.ts";
import {pages} from "./page/pages.ts";

const folder = new URL("../docs/reference/", import.meta.url);
mkdirSync(folder, {recursive: true});
const wanted = await pages();
for (const [name, text] of Object.entries(wanted)) writeFileSync(new URL(name, folder), text);
for (const name of readdirSync(folder)) if (!Object.hasOwn(wanted, name)) rmSync(new URL(name, folder));
for (const [file, text] of Object.entries(withAnswers())) writeFileSync(new URL(`../${file}`, import.meta.url), refreshed(text));
