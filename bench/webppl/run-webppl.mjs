// Runs the model in WebPPL: a case as JSON on stdin, posterior and times on stdout. Plain JavaScript in a process of its own: WebPPL makes its names global.
import {readFileSync} from "node:fs";
import {createRequire} from "node:module";

const [folder, rounds] = process.argv.slice(2);
const webppl = createRequire(`${folder}/`)("webppl");
const program = readFileSync(new URL("model.wppl", import.meta.url), "utf8");

globalThis.given = JSON.parse(readFileSync(0, "utf8"));
const times = [];
let answer;
globalThis.outside = {
  now: () => performance.now(),
  report(found, ms) {
    times.push(ms);
    const posterior = Array.from({length: globalThis.given.months}, () => 0);
    const makers = {};
    for (const one of found.support()) {
      const p = Math.exp(found.score(one));
      posterior[one.month] += p;
      makers[one.maker] = (makers[one.maker] ?? 0) + p;
    }
    answer = {posterior, makers};
  },
};
for (let round = 0; round < Number(rounds); round++) webppl.run(program, () => {});
console.log(JSON.stringify({...answer, times}));
