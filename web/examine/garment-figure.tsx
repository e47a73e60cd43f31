// The garment as a drawing: its places are buttons, looked-at ones are stitched in, the best next look is marked.
import type {Garment, NextLook} from "../../engine/index.ts";
import {GarmentDrawing, sheet} from "../plot/garment-drawing.tsx";
import {outlineOf} from "../plot/garment-outline.ts";
import type {SeePlace} from "./marks.ts";

export interface FigureProps {
  readonly garment: Garment;
  readonly places: readonly SeePlace[];
  readonly next: readonly NextLook[];
  onOpen(place: string, mark: string | null): void;
}

export function GarmentFigure({garment, places, next, onOpen}: FigureProps) {
  const outline = outlineOf(garment.type);
  const looked = (place: SeePlace) => place.marks.filter(({id}) => garment.saw[id] !== undefined).length + (place.id === "care-label-back" && (garment.saw.rows?.length ?? 0) > 0 ? 1 : 0);
  const [best] = next;
  const drawn = places.filter(({id}) => outline.spots[id]);
  const beside = places.filter(({id}) => !outline.spots[id]);
  const bestPlace = places.find(({name, marks}) => best && (name === best.place || marks.some(({id}) => id === best.id)));
  const done = places.filter((place) => looked(place) > 0).length;
  const state = (place: SeePlace) => (place === bestPlace ? "spot best" : looked(place) > 0 ? "spot done" : "spot");
  const words = (place: SeePlace) => `${place.name}${looked(place) > 0 ? `, ${looked(place)} seen` : ", not looked at"}${place === bestPlace ? ", look here next" : ""}`;
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
                <span aria-hidden="true" />
              </button>
            );
          })}
        </div>
        <ul className="figure-beside">
          {beside.map((place) => <li key={place.id}><button type="button" className={looked(place) > 0 ? "plain done" : "plain"} onClick={() => onOpen(place.id, null)}>{looked(place) > 0 ? "✓ " : ""}{place.name}</button></li>)}
        </ul>
      </div>
    </section>
  );
}
