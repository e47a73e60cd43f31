// Narrows the rack down: years, maker, kind, place, standing, price, sureness, odd marks, tags.
import type {ReactNode} from "react";
import {standings, type RackPage} from "../../store/model.ts";
import {filtersSet, surenesses, wholeRack, type RackView} from "./address.ts";

type Query = RackView["query"];

export interface NarrowProps {
  readonly view: RackView;
  readonly values: RackPage["values"];
  /** Title of a maker's book. */
  readonly makerName: (maker: string) => string;
  readonly onChange: (change: Partial<Query>) => void;
}

export function Narrow({view, values, makerName, onChange}: NarrowProps) {
  const {query} = view;
  const set = filtersSet(view);
  return (
    <form className="narrow" aria-label="Narrow down" onSubmit={(event) => event.preventDefault()}>
      <fieldset className="narrow-years">
        <legend>Made</legend>
        <YearBox label="from" value={query.from} onChange={(from) => onChange({from})} />
        <YearBox label="until" value={query.until} onChange={(until) => onChange({until})} />
        <label>
          at least
          <select value={String(query.atLeast)} onChange={({target}) => onChange({atLeast: Number(target.value)})}>
            {[...new Set([0.1, 0.25, 0.5, 0.75, 0.9, query.atLeast])].sort().map((share) => (
              <option key={share} value={share}>{`${Math.round(share * 100)} in 100`}</option>
            ))}
          </select>
        </label>
      </fieldset>
      <Choice label="Maker" value={query.maker} any="any maker" options={values.makers.map((maker) => [maker, makerName(maker)])} onChange={(maker) => onChange({maker})} />
      <Choice label="Kind" value={query.type} any="any kind" options={values.types} onChange={(type) => onChange({type})} />
      <Choice label="Kept" value={query.place} any="anywhere" options={values.places} onChange={(place) => onChange({place})} />
      <Choice label="Standing" value={query.standing} any="any standing" options={standings} onChange={(standing) => onChange({standing: standing as Query["standing"]})} />
      <Choice label="Date" value={query.sureness} any="sure or not" options={surenesses.map((one) => [one, one === "undated" ? "not dated yet" : one])} onChange={(sureness) => onChange({sureness: sureness as Query["sureness"]})} />
      <Choice label="Tag" value={query.tag} any="any tag" options={values.tags} onChange={(tag) => onChange({tag})} />
      <fieldset className="narrow-price">
        <legend>Asking</legend>
        <PriceBox label="from" cents={query.askedFrom} onChange={(askedFrom) => onChange({askedFrom})} />
        <PriceBox label="up to" cents={query.askedUntil} onChange={(askedUntil) => onChange({askedUntil})} />
      </fieldset>
      <Tick label="with odd marks only" on={query.odd === true} onChange={(on) => onChange({odd: on ? true : null})} />
      <Tick label="taken off the rack" on={query.removed} onChange={(removed) => onChange({removed})} />
      <button type="button" className="plain" disabled={set === 0} onClick={() => onChange({...wholeRack.query, text: query.text, sort: query.sort, descending: query.descending})}>
        {set === 0 ? "Nothing narrowed" : "Show the whole rack"}
      </button>
    </form>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string | null;
  readonly any: string;
  readonly options: readonly (string | readonly [string, string])[];
  readonly onChange: (value: string | null) => void;
}

/** A value that the rack no longer has stays in the list, as the address may still ask for it. */
function Choice({label, value, any, options, onChange}: ChoiceProps) {
  const pairs = options.map((one) => (typeof one === "string" ? ([one, one] as const) : one));
  const missing = value !== null && !pairs.some(([id]) => id === value);
  return (
    <Line label={label}>
      <select value={value ?? ""} onChange={({target}) => onChange(target.value || null)} data-set={value !== null || undefined}>
        <option value="">{any}</option>
        {missing && <option value={value}>{value}</option>}
        {pairs.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
      </select>
    </Line>
  );
}

const Line = ({label, children}: {label: string; children: ReactNode}) => (
  <label className="narrow-line">
    <span>{label}</span>
    {children}
  </label>
);

function YearBox({label, value, onChange}: {label: string; value: number | null; onChange: (value: number | null) => void}) {
  return (
    <label>
      {label}
      <input key={value} inputMode="numeric" size={4} maxLength={4} defaultValue={value ?? ""} placeholder="any" onChange={({target}) => (target.value === "" || /^\d{4}$/.test(target.value)) && onChange(target.value === "" ? null : Number(target.value))} />
    </label>
  );
}

function PriceBox({label, cents, onChange}: {label: string; cents: number | null; onChange: (cents: number | null) => void}) {
  const read = (text: string) => (/^\d{1,9}([.,]\d{1,2})?$/.test(text) ? Math.round(Number(text.replace(",", ".")) * 100) : null);
  return (
    <label>
      {label}
      <input key={cents} inputMode="decimal" size={6} defaultValue={cents === null ? "" : cents / 100} placeholder="any" onBlur={({target}) => onChange(read(target.value.trim()))} />
    </label>
  );
}

function Tick({label, on, onChange}: {label: string; on: boolean; onChange: (on: boolean) => void}) {
  return (
    <label className="narrow-tick">
      <input type="checkbox" checked={on} onChange={({target}) => onChange(target.checked)} />
      {label}
    </label>
  );
}
