// Finds, sorts and narrows down the sales.
import {useEffect, useState} from "react";
import {grades} from "../../../state/model.ts";
import type {SalePage} from "../../../store/model.ts";
import {capital} from "../say.ts";
import {allSales, saleFiltersSet, type SaleView} from "./sale-address.ts";

export interface SaleNarrowProps {
  readonly view: SaleView;
  readonly values: SalePage["values"];
  readonly makerName: (maker: string) => string;
  readonly onChange: (change: Partial<SaleView>) => void;
}

const orders: readonly (readonly [string, string])[] = [
  ["sold true", "sold last"], ["sold false", "sold first"], ["price true", "dearest first"], ["price false", "cheapest first"], ["kind false", "kind"], ["maker false", "maker"], ["changed true", "written down last"],
];
const patience = 180;

export function SaleNarrow({view, values, makerName, onChange}: SaleNarrowProps) {
  const [text, setText] = useState(view.text);
  useEffect(() => setText(view.text), [view.text]);
  useEffect(() => {
    if (text === view.text) return;
    const timer = setTimeout(() => onChange({text}), patience);
    return () => clearTimeout(timer);
  }, [text, view.text, onChange]);
  const set = saleFiltersSet(view);
  const order = `${view.sort} ${view.descending}`;
  return (
    <form className="sale-narrow" aria-label="Narrow down" onSubmit={(event) => event.preventDefault()}>
      <label className="sale-find"><span className="unseen">Find among the sales</span><input type="search" maxLength={200} value={text} placeholder="Find a word: kind, maker, lot, size, note …" onChange={({target}) => setText(target.value)} /></label>
      <label>
        sorted by
        <select
          value={order}
          onChange={({target}) => {
            const [sort, down] = target.value.split(" ") as [SaleView["sort"], string];
            onChange({sort, descending: down === "true"});
          }}
        >
          {!orders.some(([id]) => id === order) && <option value={order}>{`${view.sort}, turned round`}</option>}
          {orders.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
        </select>
      </label>
      <details open={set > 0 || undefined}>
        <summary>Narrow down <span className="quiet">{set === 0 ? "nothing set" : `${set} set`}</span></summary>
        <div className="sale-filters">
          <Choice label="Kind" any="any kind" value={view.kind} options={values.kinds.map((one) => [one, capital(one)])} onChange={(kind) => onChange({kind})} />
          <Choice label="Maker" any="any maker" value={view.maker} options={values.makers.map((one) => [one, makerName(one)])} onChange={(maker) => onChange({maker})} />
          <Choice label="Grade" any="any grade" value={view.grade} options={grades.map((one) => [one, one])} onChange={(grade) => onChange({grade: grade as SaleView["grade"]})} />
          <Choice label="Sold through" any="anywhere" value={view.channel} options={values.channels.map((one) => [one, one])} onChange={(channel) => onChange({channel})} />
          <Choice label="Whose" any="mine and others'" value={view.own === null ? null : String(view.own)} options={[["true", "off my own rack"], ["false", "written down of others"]]} onChange={(own) => onChange({own: own === null ? null : own === "true"})} />
          <label>Sold from<input type="date" value={view.from ?? ""} onChange={({target}) => onChange({from: target.value || null})} /></label>
          <label>until<input type="date" value={view.until ?? ""} onChange={({target}) => onChange({until: target.value || null})} /></label>
          <label className="sale-tick"><input type="checkbox" checked={view.removed} onChange={({target}) => onChange({removed: target.checked})} />taken out of the sales</label>
          <button type="button" className="plain" disabled={set === 0} onClick={() => onChange({...allSales, text: view.text, sort: view.sort, descending: view.descending})}>{set === 0 ? "Nothing narrowed" : "Show all sales"}</button>
        </div>
      </details>
    </form>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly any: string;
  readonly value: string | null;
  readonly options: readonly (readonly [id: string, name: string])[];
  readonly onChange: (value: string | null) => void;
}

/** A value that the sales no longer have stays in the list, as the address may still ask for it. */
function Choice({label, any, value, options, onChange}: ChoiceProps) {
  return (
    <label>
      {label}
      <select value={value ?? ""} onChange={({target}) => onChange(target.value || null)} data-set={value !== null || undefined}>
        <option value="">{any}</option>
        {value !== null && !options.some(([id]) => id === value) && <option value={value}>{value}</option>}
        {options.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
      </select>
    </label>
  );
}
