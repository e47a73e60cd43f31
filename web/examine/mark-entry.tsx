// One mark to be filled in: not looked at, looked and none there, or what is there.
import {useId} from "react";
import type {Garment} from "../../engine/index.ts";
import type {SeeMark} from "./marks.ts";
import {averageOf, weightsOf, writtenOf, type Weights} from "./seen-weights.ts";

type Seen = Garment["saw"][string] | undefined;

export interface EntryProps {
  readonly mark: SeeMark;
  readonly seen: Seen;
  onSee(seen: Seen): void;
}

export function MarkEntry({mark, seen, onSee}: EntryProps) {
  return (
    <fieldset className={seen === undefined ? "entry" : "entry done"}>
      <legend>{mark.name}</legend>
      {mark.says && <p className="quiet">{mark.says}</p>}
      {mark.kind === "choice" ? <Choice mark={mark} seen={seen} onSee={onSee} /> : mark.kind === "presence" ? <Presence mark={mark} seen={seen} onSee={onSee} /> : <Text mark={mark} seen={seen} onSee={onSee} />}
      {seen !== undefined && <button type="button" className="quiet" onClick={() => onSee(undefined)}>Did not look after all</button>}
    </fieldset>
  );
}

function Choice({mark, seen, onSee}: EntryProps) {
  const weights = weightsOf(seen);
  const tick = (id: string, on: boolean) => {
    const others = weights.filter(([other]) => other !== id && other !== "none");
    onSee(writtenOf(id === "none" ? (on ? [["none", 1]] : []) : on ? [...others, [id, averageOf(others)]] : others));
  };
  const named = mark.values.some(({id}) => id === "none") ? mark.values : [...mark.values, {id: "none", name: "looked, there is none", says: null}];
  const listed = [...named, {id: "other", name: "something else", says: null}];
  return (
    <>
      <ul className="values">
        {listed.map(({id, name, says}) => (
          <li key={id}>
            <label><input type="checkbox" checked={weights.some(([one]) => one === id)} onChange={({target}) => tick(id, target.checked)} /><span>{name}{says && <span className="quiet"> {says}</span>}</span></label>
          </li>
        ))}
      </ul>
      {weights.length > 1 && <Rather weights={weights} nameOf={(id) => listed.find((one) => one.id === id)?.name ?? id} onWeights={(next) => onSee(writtenOf(next))} />}
    </>
  );
}

/** Several are ticked: which of them rather. */
function Rather({weights, nameOf, onWeights}: {weights: Weights; nameOf: (id: string) => string; onWeights: (weights: Weights) => void}) {
  const whole = weights.reduce((sum, [, weight]) => sum + weight, 0);
  const most = Math.max(...weights.map(([, weight]) => weight));
  return (
    <div className="rather">
      <p className="quiet">It may be any of these. Which rather?</p>
      {weights.map(([id, weight]) => (
        <label key={id}>
          <span>{nameOf(id)}</span>
          <input type="range" min={1} max={20} value={Math.max(1, Math.round((weight / most) * 20))} onChange={({target}) => onWeights(weights.map(([one, w]) => [one, one === id ? (Number(target.value) / 20) * most : w]))} />
          <span className="quiet">{Math.round((weight / whole) * 100)} in 100</span>
        </label>
      ))}
    </div>
  );
}

function Presence({mark, seen, onSee}: EntryProps) {
  const name = useId();
  const value = seen === "present" ? "present" : seen === "absent" || seen === "none" ? "absent" : "";
  return (
    <ul className="values">
      {([["present", "it is there"], ["absent", "looked, it is not there"]] as const).map(([id, words]) => (
        <li key={id}><label><input type="radio" name={`${name}-${mark.id}`} checked={value === id} onChange={() => onSee(id)} />{words}</label></li>
      ))}
    </ul>
  );
}

function Text({mark, seen, onSee}: EntryProps) {
  const none = seen === "none";
  const id = useId();
  const texts = none ? [] : weightsOf(seen).map(([text]) => text);
  const serial = mark.kind === "serial";
  const put = (index: number, text: string) => {
    const next = (index < texts.length ? texts.map((old, i) => (i === index ? text : old)) : [...texts, text]).filter((one) => one !== "");
    onSee(next.length === 0 ? undefined : next.length === 1 ? next[0]! : next);
  };
  return (
    <div className="text-entry">
      <label htmlFor={id}>{serial ? "The number" : "As printed; ? for a figure that cannot be read, (3/8) for a 3 or an 8"}</label>
      <input id={id} className="print" inputMode={serial ? "numeric" : "text"} autoCapitalize="characters" spellCheck={false} maxLength={200} value={texts[0] ?? ""} onChange={({target}) => put(0, target.value)} />
      {!serial && texts.map((_, i) => (
        <label key={i} className="or-else"><span>or</span><input className="print" aria-label={`${mark.name}, or else`} autoCapitalize="characters" spellCheck={false} maxLength={200} value={texts[i + 1] ?? ""} onChange={({target}) => put(i + 1, target.value)} /></label>
      ))}
      <label className="looked"><input type="checkbox" checked={none} onChange={({target}) => onSee(target.checked ? "none" : undefined)} />looked, there is none</label>
    </div>
  );
}
