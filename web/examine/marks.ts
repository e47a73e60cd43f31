// The marks that can be seen on a garment, from the public book and those of its possible makers, sorted by place.
import {labelId, type Book, type Garment, type Mark} from "../../engine/index.ts";

export interface SeeMark {
  readonly id: string;
  readonly name: string;
  readonly says: string | null;
  readonly kind: Mark["kind"];
  readonly place: string;
  /** What it can be, for a mark of several kinds. */
  readonly values: readonly {readonly id: string; readonly name: string; readonly says: string | null}[];
}

export interface SeePlace {
  readonly id: string;
  readonly name: string;
  readonly look: string;
  readonly opensSeam: boolean;
  readonly marks: readonly SeeMark[];
}

/** Where the rows of figures stand, whatever else does. */
export const rowsPlace = "care-label-back";

/** The books that hold for a garment: public ones, and those of the makers that are possible. */
export function booksFor(books: readonly Book[], {maker}: Pick<Garment, "maker">): readonly Book[] {
  const makers = maker === undefined ? [] : [maker].flat();
  return [...books.filter(({kind, book}) => kind === "maker" && makers.includes(book)), ...books.filter(({kind}) => kind === "public")];
}

/** Every place with a mark; a maker's own marks come before public ones. */
export function placesFor(books: readonly Book[]): SeePlace[] {
  const marks = new Map<string, SeeMark>();
  for (const {marks: own, labels} of books) {
    if (labels && !marks.has(labelId)) marks.set(labelId, {id: labelId, name: labels.name, says: labels.says ?? null, kind: "choice", place: labels.place, values: valuesOf(labels.kinds)});
    for (const [id, mark] of Object.entries(own)) {
      if (!marks.has(id)) marks.set(id, {id, name: mark.name, says: mark.says ?? null, kind: mark.kind, place: mark.place, values: mark.kind === "choice" ? valuesOf(mark.values) : []});
    }
  }
  const places = new Map<string, SeePlace & {marks: SeeMark[]}>();
  for (const mark of marks.values()) {
    let place = places.get(mark.place);
    if (!place) {
      const told = books.map(({places: own}) => own[mark.place]).find((one) => one !== undefined);
      places.set(mark.place, (place = {id: mark.place, name: told?.name ?? mark.place, look: told?.look ?? "", opensSeam: told?.cost === "opens a seam", marks: []}));
    }
    place.marks.push(mark);
  }
  return [...places.values()];
}

const valuesOf = (values: Readonly<Record<string, {readonly name: string; readonly says?: string | undefined}>>) => Object.entries(values).map(([id, {name, says}]) => ({id, name, says: says ?? null}));

/** What was written for a mark; undefined when nobody looked. */
export const seenOf = ({saw}: Garment, id: string): Garment["saw"][string] | undefined => saw[id];

/** The garment with something written for a mark, or with the mark not looked at. */
export function withSeen(garment: Garment, id: string, seen: Garment["saw"][string] | undefined): Garment {
  const {[id]: _, ...rest} = garment.saw;
  return {...garment, saw: (seen === undefined ? rest : {...rest, [id]: seen}) as Garment["saw"]};
}
