// Sends what waits as soon as the server is back: when the device finds its network again, when the page is looked at, and every so often.
import {sendWaiting, watchOutbox} from "./outbox.ts";

const [soon, seldom] = [3_000, 30_000];

/** Starts it for this page; called once. */
export function keepSending(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let pause = soon;
  let busy = false;
  const attempt = async () => {
    if (busy) return;
    busy = true;
    clearTimeout(timer);
    const left = await sendWaiting().catch(() => 0);
    busy = false;
    if (left === 0) {
      pause = soon;
      return;
    }
    timer = setTimeout(() => void attempt(), pause);
    pause = Math.min(seldom, pause * 1.6);
  };
  const now = () => {
    pause = soon;
    void attempt();
  };
  addEventListener("online", now);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && now());
  watchOutbox(() => {
    clearTimeout(timer);
    if (!busy) timer = setTimeout(() => void attempt(), pause);
  });
  now();
}
