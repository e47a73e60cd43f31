// How long an input takes when the tool is warm and the input is new.
import {garmentFiles} from "./seed-inputs.ts";
import {give, type Outcome} from "./targets.ts";

/** What comes first pays for making books ready and for compiling; that is not the input's fault. */
export function warmUp(): void {
  for (const text of garmentFiles.slice(0, 6)) give("garment", Buffer.from(text), true);
}

/** Milliseconds by the clock or by what the processor worked, whichever is less: waiting for other programs does not count. */
export function timed(run: () => Outcome): {readonly outcome: Outcome; readonly ms: number} {
  const before = process.cpuUsage();
  const start = performance.now();
  const outcome = run();
  const {user, system} = process.cpuUsage(before);
  return {outcome, ms: Math.min(performance.now() - start, (user + system) / 1000)};
}
