// What moved the price, away from what any such garment brings: stitches to the right for more, to the left for less, and the same in words.
import type {Driver} from "../../../worth/answer.ts";
import {capital, sayFactor, withNames} from "../say.ts";

const half = 42;

/** Five stitches are a factor of about three. */
const stitchesOf = (factor: number): number => Math.min(5, Math.max(1, Math.round(Math.abs(Math.log(factor)) * 4.5)));

export function Drivers({drivers, makers}: {readonly drivers: readonly Driver[]; readonly makers: ReadonlyMap<string, string>}) {
  return (
    <section aria-label="What moved the price">
      <header><h2>What moved the price</h2><span className="quiet">against the average of its kind</span></header>
      {drivers.length === 0 && <p className="quiet">Nothing yet: the sales are too few or too alike to tell what makes a difference.</p>}
      <ul className="drivers">
        {drivers.map(({what, words, factor}) => {
          const even = Math.abs(factor - 1) < 0.005;
          const more = factor > 1;
          return (
            <li key={`${what} ${words}`}>
              <svg width={2 * half + 4} height={12} viewBox={`0 0 ${2 * half + 4} 12`} aria-hidden="true">
                <path className="axis" d={`M${half + 2} 0V12`} />
                {!even && Array.from({length: stitchesOf(factor)}, (_, i) => <path key={i} className={more ? "more" : "less"} d={`M${more ? half + 5 + i * 8 : half - 7 - i * 8} 6h6`} />)}
              </svg>
              <span>{capital(withNames(words, makers))}: <b>{sayFactor(factor)}</b></span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
