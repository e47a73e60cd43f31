// The flaws of a garment: placed by a press on its drawing, listed with what each costs.
import {useState} from "react";
import type {GarmentKind} from "../../state/garment-kind.ts";
import {sayFlaw, sayPoints, type Graded} from "../../state/grade.ts";
import type {Flaw} from "../../state/model.ts";
import {placeAt} from "../../state/place.ts";
import type {GradeRule} from "../../state/rule.ts";
import {Button} from "../ui/button.tsx";
import {CrossStitch} from "./cross-stitch.tsx";
import {FlawPanel} from "./flaw-panel.tsx";
import {FlawSheet} from "./flaw-sheet.tsx";
import {capital} from "./measure-figure.tsx";

export interface FlawSectionProps {
  readonly kind: GarmentKind;
  readonly flaws: readonly Flaw[];
  readonly rule: GradeRule;
  readonly graded: Graded | null;
  onChange(flaws: Flaw[]): void;
}

const fresh: Flaw = {kind: "", place: "", side: "front", x: null, y: null, size: null, severity: "plain", mended: false, note: ""};

export function FlawSection({kind, flaws, rule, graded, onChange}: FlawSectionProps) {
  const [open, setOpen] = useState<{readonly index: number | null; readonly flaw: Flaw} | null>(null);
  const names = flaws.map((flaw) => sayFlaw(flaw, rule));
  const pointsOf = (flaw: Flaw) => graded?.parts.find((part) => part.flaw === flaw)?.points ?? 0;
  const change = (flaw: Flaw) => {
    if (open!.index !== null) {
      onChange(flaws.map((one, i) => (i === open!.index ? flaw : one)));
      return setOpen({index: open!.index, flaw});
    }
    if (flaw.kind !== "") onChange([...flaws, flaw]);
    setOpen({index: flaw.kind === "" ? null : flaws.length, flaw});
  };
  const shown = open && open.index !== null ? flaws[open.index] : undefined;
  return (
    <section aria-label="Flaws">
      <header><h2>Flaws</h2><span className="quiet">press the drawing where one is</span></header>
      <div className="flaw-panels">
        {(["front", "back", "inside"] as const).map((side) => (
          <FlawPanel key={side} kind={kind} side={side} flaws={flaws} names={names} onPlace={(x, y) => setOpen({index: null, flaw: {...fresh, side, x: rounded(x), y: rounded(y), place: placeAt(kind, side, x, y)}})} onOpen={(index) => setOpen({index, flaw: flaws[index]!})} />
        ))}
      </div>
      <ol className="flaw-list">
        {flaws.map((flaw, index) => (
          <li key={index}>
            <button type="button" onClick={() => setOpen({index, flaw})}>
              <CrossStitch {...flaw} />
              <span>{capital(names[index]!)}{flaw.note && <span className="quiet"> · {flaw.note}</span>}</span>
              <span className="quiet">{sayPoints(pointsOf(flaw))}</span>
            </button>
          </li>
        ))}
      </ol>
      <p className="flaw-ways"><Button onClick={() => setOpen({index: null, flaw: fresh})}>Add a flaw by name</Button>{flaws.length === 0 && <span className="quiet">None noted.</span>}</p>
      {open && (open.index === null || shown) && (
        <FlawSheet
          flaw={shown ?? open.flaw}
          kind={kind}
          rule={rule}
          points={shown ? pointsOf(shown) : null}
          onChange={change}
          onRemove={() => {
            onChange(flaws.filter((_, i) => i !== open.index));
            setOpen(null);
          }}
          onClose={() => setOpen(null)}
        />
      )}
    </section>
  );
}

/** A thousandth of the drawing is finer than a thumb. */
const rounded = (part: number) => Math.round(Math.min(1, Math.max(0, part)) * 1000) / 1000;
