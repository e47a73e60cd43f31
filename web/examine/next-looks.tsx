// What to look at next: where, how, what it would settle and what it costs.
import type {NextLook} from "../../engine/index.ts";

const efforts = ["", "A glance.", "Turn something out.", "Takes a loupe.", "Unfold or empty it.", "Takes tools."];

export function NextLooks({next, onOpen}: {readonly next: readonly NextLook[]; onOpen(look: NextLook): void}) {
  const [best, ...others] = next;
  if (!best) return null;
  return (
    <section className="next" aria-label="Look next">
      <h2><span className="look-rank" aria-hidden="true">1</span> Look next: {best.name}</h2>
      <p>{best.place === best.name ? "" : `${capital(best.place)}. `}{best.look}</p>
      <p className="quiet">{efforts[Math.round(best.effort)]} {worth(best)}{best.opensSeam ? " It opens a seam: the garment is harmed." : " It costs the garment nothing."}</p>
      <button type="button" className="main" onClick={() => onOpen(best)}>Write down what is there</button>
      {others.length > 0 && (
        <details>
          <summary>Other looks</summary>
          <ol>
            {others.slice(0, 8).map((look) => (
              <li key={look.id}><button type="button" className="quiet" onClick={() => onOpen(look)}>{look.name}</button> <span className="quiet">{look.place}; {worth(look).toLowerCase()}{look.opensSeam ? " opens a seam" : ""}</span></li>
            ))}
          </ol>
        </details>
      )}
    </section>
  );
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** Bits as a dealer would say it: the part of the months still open that is expected to be left. */
function worth({bits}: NextLook): string {
  const left = 2 ** -bits;
  if (left > 0.9) return "Settles little.";
  if (left > 0.6) return "Narrows the months by about a third.";
  if (left > 0.35) return "Halves the months still open.";
  if (left > 0.15) return "Leaves about a quarter of the months still open.";
  return "Settles almost everything.";
}
