// The garment as a drawing: its places are buttons, looked-at ones are stitched in, the best next look is marked.
import {rowsId, type Garment, type NextLook} from "../../engine/index.ts";
import {GarmentDrawing, sheet} from "../plot/garment-drawing.tsx";
import {outlineOf} from "../plot/garment-outline.ts";
import {rowsPlace, type SeePlace} from "./marks.ts";

/** So many looks are numbered on the drawing. */
const most = 3;
const nth = ["next", "second", "third"];

export interface FigureProps {
  readonly garment: Garment;
  readonly places: readonly SeePlace[];
  readonly next: readonly NextLook[];
  onOpen(place: string, mark: string | null): void;
}

export function GarmentFigure({garment, places, next, onOpen}: FigureProps) {
  const outline = outlineOf(garment.type);
  const looked = (place: SeePlace) => place.marks.filter(({id}) => garment.saw[id] !== undefined).length + (place.id === rowsPlace && (garment.saw.rows?.length ?? 0) > 0 ? 1 : 0);
  const drawn = places.filter(({id}) => outline.spots[id]);
  const beside = places.filter(({id}) => !outline.spots[id]);
  const ranks = placeRanks(places, next);
  const done = places.filter((place) => looked(place) > 0).length;
  const state = (place: SeePlace) => ["spot", looked(place) > 0 ? "done" : "", ranks.get(place.id) === 1 ? "best" : ranks.has(place.id) ? "ranked" : ""].join(" ").trim();
  const words = (place: SeePlace) => `${place.name}${looked(place) > 0 ? `, ${looked(place)} seen` : ", not looked at"}${ranks.has(place.id) ? `, look here ${nth[ranks.get(place.id)! - 1]}` : ""}`;
  return (
    <section className="figure" aria-label="The garment">
      <header><h2>The garment</h2><span className="quiet">{done} of {places.length} places looked at</span></header>
      <div className="figure-card">
        <div className="figure-sheet">
          <GarmentDrawing outline={outline} />
          {drawn.map((place) => {
            const {x, y} = outline.spots[place.id]!;
            return (
              <button key={place.id} type="button" className={state(place)} title={place.name} aria-label={words(place)} style={{left: `${(x / sheet.width) * 100}%`, top: `${(y / sheet.height) * 100}%`}} onClick={() => onOpen(place.id, null)}>
                <span aria-hidden="true" data-rank={ranks.get(place.id)} />
              </button>
            );
          })}
        </div>
        <p className="figure-key quiet">
          <span><span className="spot done"><span aria-hidden="true" /></span>looked at</span>
          <span><span className="spot best"><span aria-hidden="true" data-rank="1" /></span>look next</span>
          <span><span className="spot"><span aria-hidden="true" /></span>not yet</span>
        </p>
        <ul className="figure-beside">
          {beside.map((place) => <li key={place.id}><button type="button" className={looked(place) > 0 ? "plain done" : "plain"} onClick={() => onOpen(place.id, null)}>{looked(place) > 0 ? "✓ " : ranks.has(place.id) ? `${ranks.get(place.id)} ` : ""}{place.name}</button></li>)}
        </ul>
      </div>
    </section>
  );
}

/** The places of the best looks, numbered as in the list of looks. */
function placeRanks(places: readonly SeePlace[], next: readonly NextLook[]): Map<string, number> {
  const ranks = new Map<string, number>();
  next.slice(0, most).forEach((look, i) => {
    const place = look.id === rowsId ? places.find(({id}) => id === rowsPlace) : places.find(({marks}) => marks.some(({id}) => id === look.id));
    if (place && !ranks.has(place.id)) ranks.set(place.id, i + 1);
  });
  return ranks;
}
