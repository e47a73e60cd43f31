// The size on the tag and the weight of the cloth, and what the tape says to the tag.
import {useMemo, useState} from "react";
import {sayCloth, type ClothWeight} from "../../state/cloth.ts";
import type {GarmentKind} from "../../state/garment-kind.ts";
import type {Sizes, State, TagSize} from "../../state/model.ts";
import {oddSizes, tagChecks} from "../../state/tag-check.ts";
import {readTagSize} from "../../state/tag-size.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {SettledInput} from "../ui/settled-input.tsx";
import {capital} from "./measure-figure.tsx";

export interface TagSectionProps {
  readonly kind: GarmentKind;
  readonly sizes: Sizes;
  readonly state: State | null;
  onChange(sizes: Sizes): void;
  /** Notes what the tape says a needle did. */
  onAlteration(kind: string): void;
}

const entries = ["waist", "inseam", "chest", "neck"] as const;

export function TagSection({kind, sizes, state, onChange, onAlteration}: TagSectionProps) {
  const {tag, cloth} = sizes;
  const checks = useMemo(() => tagChecks(kind, sizes, state), [kind, sizes, state]);
  const odd = new Set(oddSizes(checks).map(({id}) => id));
  const [unit, setUnit] = useState<ClothWeight["unit"]>(cloth?.unit ?? "oz/yd2");
  const setTag = (next: TagSize | null) => onChange({...sizes, tag: next});
  return (
    <section aria-label="Tag and cloth">
      <header><h2>Tag and cloth</h2></header>
      <div className="details-grid tag-grid">
        <Field label="Size on the tag" hint={tag ? readAs(tag) : "as printed: W 34 L 32, 15 1/2, M"}>
          {(tie) => <input {...tie} maxLength={200} value={tag?.text ?? ""} onChange={({target}) => setTag(target.value === "" ? null : readTagSize(target.value, kind))} />}
        </Field>
        <Field label="Weight of the cloth" hint={cloth ? sayCloth(cloth) : undefined}>
          {(tie) => (
            <span className="price">
              <SettledInput {...tie} inputMode="decimal" value={cloth ? String(cloth.weight) : ""} read={readWeight} onSettle={(typed) => onChange({...sizes, cloth: typed === "" ? null : {weight: Number(typed), unit}})} />
              <select aria-label="Unit of the cloth's weight" value={unit} onChange={({target}) => {
                const next = target.value as ClothWeight["unit"];
                setUnit(next);
                if (cloth) onChange({...sizes, cloth: {...cloth, unit: next}});
              }}>
                <option value="oz/yd2">oz/yd²</option>
                <option value="g/m2">g/m²</option>
              </select>
            </span>
          )}
        </Field>
      </div>
      {tag && (
        <details className="tag-fix">
          <summary>The tag means something else</summary>
          <div className="details-grid">
            {entries.map((entry) => (
              <Field key={entry} label={`${capital(entry)}, inches`}>
                {(tie) => <SettledInput {...tie} inputMode="decimal" value={tag[entry] === null ? "" : String(tag[entry])} read={readWeight} onSettle={(typed) => setTag({...tag, [entry]: typed === "" ? null : Math.min(Number(typed), entry === "neck" ? 40 : 100)})} />}
              </Field>
            ))}
          </div>
        </details>
      )}
      {checks.length > 0 && (
        <ul className="tag-checks">
          {checks.map(({point, sentence, causes: [best]}) => {
            const needled = odd.has(`sizes.${point}`);
            const open = needled && best!.odd && best!.id !== "other-tag" && !state?.alterations.some(({kind: done}) => done === best!.id);
            return <li key={point} className={needled ? "odd-box" : undefined}>{needled && <b>Odd. </b>}{capital(sentence)}. {open && <Button look="quiet" onClick={() => onAlteration(best!.id)}>Note {best!.says} with its state</Button>}</li>;
          })}
          <li className="quiet">Change as ISO 5077 counts it; the odds come from a written table of what is common, no source. They do not move the date.</li>
        </ul>
      )}
    </section>
  );
}

function readAs(tag: TagSize): string {
  const read = entries.flatMap((entry) => (tag[entry] === null ? [] : [`${entry} ${tag[entry]} in`]));
  return read.length > 0 ? `read as ${read.join(", ")}` : "kept as it stands; it says no inches";
}

/** Null when it is no number above 0; empty takes it out. */
function readWeight(typed: string): string | null {
  const plain = typed.trim().replace(",", ".");
  if (plain === "") return "";
  return /^\d{1,4}(\.\d{1,2})?$/.test(plain) && Number(plain) > 0 && Number(plain) <= 2000 ? String(Number(plain)) : null;
}
