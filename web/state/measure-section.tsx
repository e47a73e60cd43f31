// All points of measure of a garment beside its drawing.
import {useMemo, useState} from "react";
import type {GarmentKind} from "../../state/garment-kind.ts";
import type {Sizes} from "../../state/model.ts";
import {sizeDoubts} from "../../state/plausible.ts";
import {measuredOf, pointsOf} from "../../state/point.ts";
import {MeasureField} from "./measure-field.tsx";
import {MeasureFigure} from "./measure-figure.tsx";
import {UnitChoice} from "./unit-choice.tsx";
import {useTapeUnit} from "./use-tape-unit.ts";
import {withMeasure} from "./with-measure.ts";

export interface MeasureSectionProps {
  readonly kind: GarmentKind;
  readonly sizes: Sizes;
  onChange(sizes: Sizes): void;
}

export function MeasureSection({kind, sizes, onChange}: MeasureSectionProps) {
  const [unit, setUnit] = useTapeUnit();
  const [at, setAt] = useState<string | null>(null);
  const [typing, setTyping] = useState<string | null>(null);
  const points = pointsOf(kind);
  const doubts = useMemo(() => sizeDoubts(kind, sizes), [kind, sizes]);
  const measured = useMemo(() => new Set(measuredOf(kind, sizes).map(({point}) => point.id)), [kind, sizes]);
  // What is half typed is not doubted until it is left.
  const shown = doubts.filter(({points: of}) => typing === null || !of.includes(typing));
  const strange = doubts.filter(({points: of}) => of.every((id) => !points.some((point) => point.id === id)));
  return (
    <section aria-label="Measures" className="measure-part">
      <header><h2>Measures</h2><span className="quiet">{measured.size} of {points.length} laid</span></header>
      <div className="measure-bench">
        <MeasureFigure kind={kind} points={points} measured={measured} doubted={new Set(shown.flatMap(({points: of}) => of))} at={points.find(({id}) => id === at) ?? null} onPoint={(id) => document.querySelector<HTMLInputElement>(`input[data-point="${id}"]`)?.focus()} />
        <div>
          <UnitChoice unit={unit} onUnit={setUnit} />
          <ol className="measure-fields">
            {points.map((point) => (
              <MeasureField
                key={point.id}
                point={point}
                length={sizes.measures.find((one) => one.point === point.id)?.length ?? null}
                unit={unit}
                // A doubt about several points stands beside the last of them.
                doubts={shown.filter(({points: of}) => points.filter(({id}) => of.includes(id)).at(-1)?.id === point.id)}
                onType={(typed) => (setTyping(point.id), onChange(withMeasure(sizes, point.id, typed, unit)))}
                onFocus={() => setAt(point.id)}
                onBlur={() => setTyping(null)}
              />
            ))}
          </ol>
          <p className="quiet">As on the tape: 31 1/2, 16.25 or 81 cm. Enter goes to the next. Lay the garment flat and do not stretch it.</p>
          {strange.length > 0 && <p className="quiet">Also kept, from another kind of garment: {strange.map(({problem}) => problem.at).join(", ")}.</p>}
        </div>
      </div>
    </section>
  );
}
