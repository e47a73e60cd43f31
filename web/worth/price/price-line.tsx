// A price as a stitch line: dashes where 8 in 10 lie, dots out to 9 in 10, a knot at the middle.
import type {PriceRange} from "../../../worth/answer.ts";
import type {TapeScale} from "./tape-scale.ts";

export function PriceLine({price, scale, width}: {readonly price: PriceRange | null; readonly scale: TapeScale; readonly width: number}) {
  if (!price) return <svg className="price-line" aria-hidden="true" width={width} height={14} viewBox={`0 0 ${width} 14`}><path d={`M8 7H${width - 8}`} className="loose" /></svg>;
  const wide = price.ranges.find(({share}) => share === 0.9);
  const [a, b, c, d] = [scale.x(wide?.low ?? price.low), scale.x(price.low), scale.x(price.high), scale.x(wide?.high ?? price.high)];
  return (
    <svg className="price-line" aria-hidden="true" width={width} height={14} viewBox={`0 0 ${width} 14`}>
      {b > a && <path d={`M${a} 7H${b}`} className="soft" />}
      <path d={`M${b} 7H${Math.max(b + 1, c)}`} className="firm" />
      {d > c && <path d={`M${c} 7H${d}`} className="soft" />}
      <circle cx={scale.x(price.typical)} cy={7} r={4.2} className="knot" />
    </svg>
  );
}
