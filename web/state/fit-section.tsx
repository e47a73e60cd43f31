// Would it fit: the measures of a body beside the garment's. They stay on this device and are never kept with the garment.
import {useState} from "react";
import {bodyAsked, fitOf, type Body} from "../../state/fit.ts";
import type {GarmentKind} from "../../state/garment-kind.ts";
import {readLength} from "../../state/length.ts";
import type {Sizes} from "../../state/model.ts";
import {bodyNames, type BodyMeasure} from "../../state/point-shape.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {capital} from "./measure-figure.tsx";
import {useTapeUnit} from "./use-tape-unit.ts";

const key = "ticking.body";

export function FitSection({kind, sizes}: {readonly kind: GarmentKind; readonly sizes: Sizes}) {
  const [unit] = useTapeUnit();
  const [body, setBody] = useState<Body>(keptBody);
  const keep = (next: Body) => (localStorage.setItem(key, JSON.stringify(next)), setBody(next));
  const asked = bodyAsked(kind);
  const fit = fitOf(kind, sizes, body);
  const type = (measure: BodyMeasure, typed: string) => {
    const {[measure]: _, ...others} = body;
    keep(typed.trim() === "" ? others : {...others, [measure]: {typed: typed.slice(0, 20), unit}});
  };
  return (
    <section aria-label="Would it fit" className="fit-part">
      <header><h2>Would it fit?</h2><span className="quiet">garment less body</span></header>
      <div className="details-grid">
        {asked.map((measure) => {
          const typed = body[measure];
          return (
            <Field key={measure} label={`Body: ${bodyNames[measure]}`} hint={typed ? typed.unit : unit} wrong={typed && !readLength(typed) ? "No length yet" : null}>
              {(tie) => <input {...tie} maxLength={20} autoComplete="off" value={typed?.typed ?? ""} onChange={({target}) => type(measure, target.value)} />}
            </Field>
          );
        })}
      </div>
      {fit.points.length > 0 && <p className="fit-verdict" role="status">{fit.sentence}</p>}
      <ul className="fit-list">
        {fit.points.map(({point, step, word, perhaps, sentence}) => (
          <li key={point}><FitScale step={step} /> <span><b>{word}</b>{perhaps && <span className="quiet">, perhaps {perhaps}</span>}<br /><span className="quiet">{capital(sentence.slice(0, sentence.lastIndexOf(`, ${word}`)))}</span></span></li>
        ))}
      </ul>
      <p className="quiet">
        {Object.keys(body).length > 0 && fit.missing.length > 0 && `Not compared: ${fit.missing.join(", ")}. `}
        Measure the body over what is worn beneath. How much ease each word stands for is common practice, no source. {Object.keys(body).length > 0 && <Button look="quiet" onClick={() => keep({})}>Forget this body</Button>}
      </p>
    </section>
  );
}

/** Five places from too little to too much, the one that holds filled; said in words beside it. */
function FitScale({step}: {readonly step: number}) {
  return (
    <svg className="fit-scale" width={74} height={14} viewBox="0 0 74 14" aria-hidden="true">
      <path d="M4 7H70" />
      {[0, 1, 2, 3, 4].map((i) => <circle key={i} cx={7 + 15 * i} cy={7} r={i === step ? 5.5 : 2.6} className={i === step ? "on" : ""} />)}
    </svg>
  );
}

function keptBody(): Body {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "{}");
    return typeof kept === "object" && kept !== null ? (Object.fromEntries(Object.entries(kept).filter(([measure, length]) => measure in bodyNames && typeof (length as {typed?: unknown} | null)?.typed === "string")) as Body) : {};
  } catch {
    return {};
  }
}
