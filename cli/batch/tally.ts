// Counts what a batch does, shows how far it is on a terminal, and sums up at the end.
export interface Tally {
  dated: number;
  aside: number;
  /** Most memory held at any time, bytes. */
  mostMemory: number;
}

const figures = (n: number) => n.toLocaleString("en");

/** How far a batch is, redrawn on one line of stderr; nothing when that is no terminal. */
export function showProgress(tally: Tally, size: number | null, taken: () => number): () => void {
  const out = process.stderr;
  if (!out.isTTY) return () => {};
  const start = performance.now();
  const draw = () => {
    const seconds = (performance.now() - start) / 1000;
    const done = tally.dated + tally.aside;
    const part = size ? Math.min(1, taken() / size) : null;
    const bar = part === null ? "" : `${"━".repeat(Math.round(part * 20))}${"─".repeat(20 - Math.round(part * 20))} ${Math.floor(part * 100)} %  `;
    const left = part && part < 1 && seconds > 2 ? `, about ${Math.ceil((seconds * (1 - part)) / part)} s left` : "";
    out.write(`\r\u001b[K${bar}${figures(done)} garments, ${figures(Math.round(done / seconds))} a second${left}`);
  };
  const timer = setInterval(draw, 200);
  return () => {
    clearInterval(timer);
    out.write("\r\u001b[K");
  };
}

/** The closing line. */
export function sayTally({dated, aside, mostMemory}: Tally, seconds: number): string {
  const read = dated + aside;
  const speed = seconds > 0 ? `, ${figures(Math.round(read / seconds))} a second` : "";
  const memory = process.env.TICKING_DEBUG === "1" ? ` Memory at most ${Math.round(mostMemory / 1e6)} MB.` : "";
  return `${figures(read)} read, ${figures(dated)} dated, ${figures(aside)} set aside; ${seconds.toFixed(1)} s${speed}.${memory}`;
}
