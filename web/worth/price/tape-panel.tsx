// The price drawn: the tape, and below it on the same scale one stitch line for the garment as it stands and one for each time it may be from.
import {useRef} from "react";
import type {Branch, PriceRange, WorthAnswer} from "../../../worth/answer.ts";
import {sayShare} from "../../examine/say-share.ts";
import {useWidth} from "../../rack/use-width.ts";
import {capital, sayAbout, sayBetween} from "../say.ts";
import {PriceLine} from "./price-line.tsx";
import {Tape, type Pin} from "./tape.tsx";
import {tapeScale} from "./tape-scale.ts";

export interface TapePanelProps {
  readonly answer: Pick<WorthAnswer, "price" | "branches" | "currency">;
  readonly pins: readonly Pin[];
  /** What the first line stands for: as it stands, all of the lot. */
  readonly name: string;
}

const words = 228;

export function TapePanel({answer: {price, branches, currency}, pins, name}: TapePanelProps) {
  const frame = useRef<HTMLElement>(null);
  const whole = useWidth(frame, 720);
  const beside = whole > 640;
  const width = beside ? whole - words : whole;
  const prices = [price, ...branches.map((branch) => branch.price)].filter((one) => one !== null);
  if (prices.length === 0) return null;
  const scale = tapeScale([...prices.flatMap(edgesOf), ...pins.map(({cents}) => cents)], width);
  return (
    <section className="tape-panel" aria-label="The price, drawn" ref={frame}>
      <Tape price={price} scale={scale} pins={pins} currency={currency} width={width} label={price ? `${name}: 8 in 10 from ${sayAbout({cents: price.low, currency})} to ${sayAbout({cents: price.high, currency})}, half of them below ${sayAbout({cents: price.typical, currency})}` : "No price as it stands"} />
      <ul className={beside ? "price-lines beside" : "price-lines"}>
        {price && branches.length !== 1 && <Line name={name} said={sayAbout({cents: price.typical, currency})} price={price} scale={scale} width={width} strong />}
        {branches.map((branch) => <Line key={branch.words} name={`If ${branch.words}`} said={sayBranch(branch, currency)} price={branch.price} scale={scale} width={width} />)}
      </ul>
      <p className="quiet tape-note">Each cross is one in twenty such sales. Dashes hold 8 in 10 of them, dots 9 in 10; half bring less than the knot.</p>
    </section>
  );
}

interface LineProps {
  readonly name: string;
  readonly said: string;
  readonly price: PriceRange | null;
  readonly scale: ReturnType<typeof tapeScale>;
  readonly width: number;
  readonly strong?: boolean;
}

function Line({name, said, price, scale, width, strong = false}: LineProps) {
  return (
    <li className={strong ? "strong" : undefined}>
      <PriceLine price={price} scale={scale} width={width} />
      <span className="price-words"><b>{capital(name)}</b> <span>{said}</span></span>
    </li>
  );
}

const sayBranch = ({share, price}: Branch, currency: string) => `(${sayShare(share)}): ${price ? sayBetween(price.low, price.high, currency) : "too few sales"}`;

/** What of a price must be in sight: its 9 in 10, else its 8 in 10. */
function edgesOf({low, high, ranges}: PriceRange): readonly number[] {
  const wide = ranges.find(({share}) => share === 0.9);
  return [low, high, ...(wide ? [wide.low, wide.high] : [])];
}
