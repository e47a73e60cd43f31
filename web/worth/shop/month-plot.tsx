// Month by month: what was taken stands sewn above the line, what was spent and laid out hangs below it in open stitches, and a thread runs through the profit.
import {useRef} from "react";
import type {BookOfCurrency} from "../../../worth/answer.ts";
import {useWidth} from "../../rack/use-width.ts";
import {sayAmount} from "../money.ts";
import {gutter, monthScale, stretches, type Stretch} from "./month-scale.ts";

const height = 190;
const foot = 20;

export function MonthPlot({book: {months: all, currency}}: {readonly book: Pick<BookOfCurrency, "months" | "currency">}) {
  const frame = useRef<HTMLElement>(null);
  const width = useWidth(frame, 720);
  const months = stretches(all, width);
  const {y, zero, step, x, figures, named} = monthScale(months, width, height);
  const say = (cents: number) => sayAmount({cents, currency});
  const thread = months.map(({profit}, i) => `${i === 0 ? "M" : "L"}${(x(i) + step / 2).toFixed(1)} ${y(profit).toFixed(1)}`).join("");
  const best = months.reduce<Stretch | null>((most, one) => (most === null || one.profit > most.profit ? one : most), null);
  return (
    <section className="month-plot" aria-label="Month by month, drawn" ref={frame}>
      <svg width={width} height={height + foot} viewBox={`0 0 ${width} ${height + foot}`} role="img" aria-label={best ? `${all.length} months from ${sayMonthName(all[0]!.month)} to ${sayMonthName(all.at(-1)!.month)}; the best is ${sayStretch(best)} with a profit of ${say(best.profit)}` : "No months yet"}>
        {figures.map((cents) => (
          <g key={cents}>
            <path className={cents === 0 ? "month-line" : "month-grid"} d={`M${gutter} ${y(cents)}H${width}`} />
            <text className="tape-figure" x={gutter - 6} y={y(cents) + 4} textAnchor="end">{say(cents)}</text>
          </g>
        ))}
        {months.map((one, i) => {
          const [left, wide] = [x(i) + step * 0.16, Math.max(2, step * 0.68)];
          return (
            <g key={one.month}>
              <title>{`${sayStretch(one)}: taken ${say(one.taken)}, spent ${say(one.spent)}, laid out ${say(one.laidOut)}, profit ${say(one.profit)}`}</title>
              {one.taken > 0 && <rect className="taken" x={left} y={y(one.taken)} width={wide} height={zero - y(one.taken)} />}
              {one.spent + one.laidOut > 0 && <rect className="spent" x={left} y={zero} width={wide} height={y(-one.spent - one.laidOut) - zero} />}
              {named(i) && <text className="tape-figure" x={x(i) + step / 2} y={height + 14} textAnchor="middle">{sayShort(one)}</text>}
            </g>
          );
        })}
        {months.length > 1 && <path className="profit-thread" d={thread} />}
        {months.map(({month, profit}, i) => <circle key={month} className="profit-knot" cx={x(i) + step / 2} cy={y(profit)} r={Math.min(3.4, step / 4)} />)}
      </svg>
      <p className="quiet tape-note">{months.length < all.length ? (months.some(({month, until}) => Number(until.slice(5)) - Number(month.slice(5)) > 2) ? "By years. " : "By quarters. ") : ""}Filled, above the line: taken. Open, below it: spent and laid out. The thread with its knots: profit of what was sold.</p>
    </section>
  );
}

const at = (month: string) => new Date(`${month}-01T00:00:00Z`);
export const sayMonthName = (month: string): string => at(month).toLocaleDateString(undefined, {month: "long", year: "numeric", timeZone: "UTC"});
const sayStretch = ({month, until}: Stretch) => (month === until ? sayMonthName(month) : `${sayMonthName(month)} to ${sayMonthName(until)}`);
const sayShort = ({month}: Stretch) => (month.endsWith("-01") ? month.slice(0, 4) : at(month).toLocaleDateString(undefined, {month: "short", timeZone: "UTC"}));
