// Who may have made it: any number of makers with a book, and somebody without one.
import {unlisted, type Book, type Garment} from "../../engine/index.ts";

export interface MakerTicksProps {
  readonly maker: Garment["maker"];
  readonly books: readonly Book[];
  onMaker(maker: Garment["maker"]): void;
}

export function MakerTicks({maker, books, onMaker}: MakerTicksProps) {
  const possible = (maker === undefined ? [] : [maker].flat()).map((one) => (one === "unknown" ? unlisted : one));
  const tick = (one: string, on: boolean) => {
    const next = (on ? [...possible, one] : possible.filter((other) => other !== one)).filter((other, _, all) => other !== unlisted || all.length > 1);
    onMaker(next.length === 0 ? undefined : next.length === 1 ? next[0] : next);
  };
  const known = books.filter(({kind}) => kind === "maker").map(({book, title}) => [book, title.split(",")[0]!] as const);
  // A maker whose book is no longer in use stays ticked until it is taken away.
  const gone = possible.filter((one) => one !== unlisted && !known.some(([book]) => book === one)).map((one) => [one, `${one} (no book in use)`] as const);
  const named = possible.filter((one) => one !== unlisted).length > 0;
  return (
    <fieldset className="makers">
      <legend>Who may have made it</legend>
      {[...known, ...gone].map(([book, title]) => <Tick key={book} words={title} on={possible.includes(book)} onTick={(on) => tick(book, on)} />)}
      {named && <Tick words="or somebody without a book" on={possible.includes(unlisted)} onTick={(on) => tick(unlisted, on)} />}
      <p className="quiet">{!named ? "Nobody ticked: the public rules alone speak." : possible.length > 1 ? "Several are possible: the marks decide." : "Tick another one, too, when you are not sure."}</p>
    </fieldset>
  );
}

const Tick = ({words, on, onTick}: {words: string; on: boolean; onTick: (on: boolean) => void}) => (
  <label><input type="checkbox" checked={on} onChange={({target}) => onTick(target.checked)} />{words}</label>
);
