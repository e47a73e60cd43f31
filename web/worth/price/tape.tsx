// The price tape: a tailor's tape of money with twenty stitches heaped on it, each one sale in twenty, and pins for prices that matter.
import type {PriceRange} from "../../../worth/answer.ts";
import {sayAmount} from "../money.ts";
import {heap, twentyOf, type TapeScale} from "./tape-scale.ts";

export interface Pin {
  readonly name: string;
  readonly cents: number;
}

export interface TapeProps {
  readonly price: PriceRange | null;
  readonly scale: TapeScale;
  readonly pins: readonly Pin[];
  readonly currency: string;
  readonly width: number;
  /** Said to those who do not see it. */
  readonly label: string;
}

const cross = 10;
/** Twenty stitches in so many columns lie in a heap whose shape can be read. */
const columns = 11;
const pinRow = 16;
const tapeHeight = 26;

export function Tape({price, scale, pins, currency, width, label}: TapeProps) {
  const twenty = price ? twentyOf(price.steps) : [];
  const column = Math.max(cross, price ? (scale.x(twenty.at(-1)!) - scale.x(twenty[0]!)) / columns : cross);
  const stitches = heap(twenty, scale, column);
  const heapHeight = Math.max(3, ...stitches.map(({above}) => above + 1)) * cross + 4;
  const ground = pins.length * pinRow + heapHeight;
  const height = ground + tapeHeight;
  return (
    <svg className="tape" role="img" aria-label={label} width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
      {pins.map(({name, cents}, i) => <PinFlag key={name} name={name} amount={sayAmount({cents, currency})} x={scale.x(cents)} y={(i + 1) * pinRow - 4} foot={height} width={width} />)}
      {stitches.map(({x, above}, i) => <path key={i} className="cross" d={`M${x - 3} ${ground - 4 - above * cross}l6 -6m-6 0l6 6`} />)}
      <rect className="tape-ground" x={0} y={ground} width={width} height={tapeHeight} />
      <path className="tape-edge" d={`M0 ${ground + 0.5}H${width}M0 ${ground + tapeHeight - 0.5}H${width}`} />
      <path className="tape-marks" d={scale.marks.map(({cents, long}) => `M${scale.x(cents).toFixed(1)} ${ground}v${long ? 10 : 5}`).join("")} />
      {scale.marks.filter(({long}) => long).map(({cents}) => {
        const x = scale.x(cents);
        return <text key={cents} className="tape-figure" x={Math.min(width - 2, Math.max(2, x))} y={ground + 21} textAnchor={x < 24 ? "start" : x > width - 24 ? "end" : "middle"}>{sayAmount({cents, currency})}</text>;
      })}
    </svg>
  );
}

function PinFlag({name, amount, x, y, foot, width}: {name: string; amount: string; x: number; y: number; foot: number; width: number}) {
  const left = x > width / 2;
  return (
    <g className="price-pin">
      <path d={`M${x} ${y - 4}V${foot}`} />
      <circle cx={x} cy={y - 4} r={3.4} />
      <text x={left ? x - 8 : x + 8} y={y} textAnchor={left ? "end" : "start"}>{`${name} ${amount}`}</text>
    </g>
  );
}
