// The engine beside a general-purpose language for probabilistic programs that enumerates the same small book.
import {makeExaminer, parseMonth} from "../engine/index.ts";
import type {Line, Skipped} from "./line.ts";
import {inTurn, median} from "./measure.ts";
import {smallCases} from "./webppl/small-cases.ts";
import {askWebppl, haveWebppl, webpplVersion} from "./webppl/webppl.ts";

export function measureOutside(rounds: number): (Line | Skipped)[] {
  const name = "exact enumeration by WebPPL against the engine";
  if (!haveWebppl()) return [{name, skipped: "WebPPL is not installed and could not be"}];
  const small = smallCases[0]!;
  const examiner = makeExaminer(small.books, {since: parseMonth(small.from)!, today: parseMonth(small.until)!});
  const many = 200;
  const run = () => {
    for (let i = 0; i < many; i++) examiner.brief(small.garment);
  };
  run();
  const theirs: number[] = [];
  let posterior: readonly number[] = [];
  const [ours] = inTurn(rounds, run, () => {
    const answer = askWebppl(small, 3);
    theirs.push(median(answer.times));
    posterior = answer.posterior;
  });
  const found = examiner.brief(small.garment).finding!.posterior;
  const apart = Math.max(...posterior.map((p, t) => Math.abs(p - found[t]!)));
  const ourMs = ours! / many;
  return [
    {name, value: median(theirs) / ourMs, unit: "times", note: `WebPPL ${webpplVersion} ${median(theirs).toFixed(1)} ms, the engine ${ourMs.toFixed(3)} ms: ${small.id}, 120 months`},
    {name: "largest difference of a month between the two", value: apart, unit: "", most: 1e-9},
  ];
}
