// What the words on a label suggest: marks with what was read and why; each is taken with one tap, and none sets itself.
import {useMemo, useState} from "react";
import type {Book} from "../../engine/index.ts";
import {suggestMarks} from "../../commands/reading/suggest-marks.ts";
import type {Suggestion} from "../../commands/reading/words/suggestion.ts";
import type {World} from "../../commands/world.ts";
import {settle} from "../../reader/settle.ts";
import type {Content} from "../../store/model.ts";
import {withSeen} from "../examine/marks.ts";
import {Button} from "../ui/button.tsx";

export interface OffersProps {
  readonly content: Content;
  readonly books: readonly Book[];
  onChange(change: (content: Content) => Content): void;
}

export function WordOffers({content, books, onChange}: OffersProps) {
  const {garment, labels} = content;
  const [refused, refuse] = useState<readonly string[]>([]);
  const makers = [garment.maker ?? []].flat();
  const texts = useMemo(() => labels.flatMap(({rows}) => rows.filter(({settled}) => !settled?.left).map(({read, settled}) => settle(read, settled).best)), [labels]);
  const found = useMemo(() => (texts.length === 0 || books.length === 0 ? [] : suggestMarks(texts, {books} as Pick<World, "books">, {makers})), [texts, books, makers.join()]);
  const open = found.filter((one) => garment.saw[one.mark] === undefined && !refused.includes(keyOf(one)));
  if (open.length === 0) return null;
  return (
    <section className="offers" aria-label="Marks in the words">
      <h3>In the words on the label</h3>
      <ul>
        {open.map((one) => {
          const words = nameOf(one, books);
          return (
            <li key={one.mark}>
              <span>{words}<span className="quiet">{one.why.charAt(0).toUpperCase()}{one.why.slice(1)}.</span></span>
              <span className="offer-ways">
                <Button aria-label={`That is there: ${words}`} onClick={() => onChange((now) => ({...now, garment: withSeen(now.garment, one.mark, one.value as Content["garment"]["saw"][string])}))}>That is there</Button>
                <Button look="quiet" aria-label={`no: ${words}`} onClick={() => refuse([...refused, keyOf(one)])}>no</Button>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const keyOf = ({mark, value}: Suggestion) => `${mark}=${[value].flat().join()}`;

/** The mark in the words of its book, with its value. */
function nameOf({mark, value, book}: Suggestion, books: readonly Book[]): string {
  const rule = books.find((one) => one.book === book)?.marks[mark];
  if (!rule) return mark;
  const values = [value].flat().map((one) => (rule.kind === "choice" ? (rule.values[one]?.name ?? one) : one));
  return rule.kind === "presence" ? rule.name : `${rule.name}: ${values.join(" or ")}`;
}
