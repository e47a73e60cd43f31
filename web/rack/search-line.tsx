// Finds by words and codes, sorts, and sets the layout.
import {useEffect, useState} from "react";
import {layouts, type RackView} from "./address.ts";

export interface SearchLineProps {
  readonly view: RackView;
  readonly onChange: (change: {query?: Partial<RackView["query"]>; layout?: RackView["layout"]}) => void;
}

const orders: readonly (readonly [string, string])[] = [
  ["changed true", "changed last"], ["changed false", "changed first"], ["number false", "number"], ["date false", "oldest first"], ["date true", "newest first"],
  ["place false", "where it is kept"], ["asked true", "dearest first"], ["asked false", "cheapest first"], ["sureness true", "surest first"], ["sureness false", "least sure first"],
];
const patience = 180;

export function SearchLine({view: {query, layout}, onChange}: SearchLineProps) {
  const [text, setText] = useState(query.text);
  useEffect(() => setText(query.text), [query.text]);
  useEffect(() => {
    if (text === query.text) return;
    const timer = setTimeout(() => onChange({query: {text}}), patience);
    return () => clearTimeout(timer);
  }, [text, query.text, onChange]);

  const order = `${query.sort} ${query.descending}`;
  return (
    <div className="search-line">
      <label className="search-box">
        <span className="unseen">Find on the rack</span>
        <input type="search" value={text} maxLength={200} placeholder="Find a number, a word, a code, a mark …" onChange={({target}) => setText(target.value)} />
      </label>
      <label>
        sorted by
        <select
          value={order}
          onChange={({target}) => {
            const [sort, down] = target.value.split(" ") as [RackView["query"]["sort"], string];
            onChange({query: {sort, descending: down === "true"}});
          }}
        >
          {!orders.some(([id]) => id === order) && <option value={order}>{`${query.sort}, turned round`}</option>}
          {orders.map(([id, name]) => <option key={id} value={id}>{name}</option>)}
        </select>
      </label>
      <span role="group" aria-label="Layout" className="layouts">
        {layouts.map((one) => (
          <button key={one} type="button" className="plain" aria-pressed={one === layout} onClick={() => onChange({layout: one})}>
            {one === "hangers" ? "on hangers" : "as a list"}
          </button>
        ))}
      </span>
    </div>
  );
}
