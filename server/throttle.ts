// Makes guessing slow: after a few wrong tries each further one must wait, twice as long every time.

/** Wrong tries that are free: a slip of the finger is no attack. Source: own choice. */
const free = 5;
const longestWait = 15 * 60_000;
/** Addresses that are remembered; beyond that all wait together. */
const mostKnown = 10_000;

interface Tries {
  wrong: number;
  until: number;
}

export interface Throttle {
  /** Milliseconds that have to pass before the next try; 0: it may be made now. */
  wait(who: string, now: number): number;
  wrong(who: string, now: number): void;
  right(who: string): void;
}

export function makeThrottle(): Throttle {
  const known = new Map<string, Tries>();
  const key = (who: string) => (known.has(who) || known.size < mostKnown ? who : "everybody else");
  return {
    wait: (who, now) => Math.max(0, (known.get(key(who))?.until ?? 0) - now),
    wrong(who, now) {
      const name = key(who);
      const wrong = (known.get(name)?.wrong ?? 0) + 1;
      known.set(name, {wrong, until: wrong < free ? 0 : now + Math.min(longestWait, 1000 * 2 ** (wrong - free))});
    },
    right: (who) => void known.delete(key(who)),
  };
}
