// One mark to be filled in: not looked at, looked and none there, or what is there.
import {useId} from "react";
import type {Garment} from "../../engine/index.ts";
import type {SeeMark} from "./marks.ts";

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

/** The values that are ticked, likeliest first. */
const tickedOf = (seen: Seen): string[] => (typeof seen === "string" ? [seen] : Array.isArray(seen) ? seen.map(String) : seen && typeof seen === "object" && "either" in seen ? Object.keys(seen.either as object) : []);

function Choice({mark, seen, onSee}: EntryProps) {
  const ticked = tickedOf(seen);
  const tick = (id: string, on: boolean) => {
    const next = id === "none" ? (on ? ["none"] : []) : on ? [...ticked.filter((one) => one !== "none"), id] : ticked.filter((one) => one !== id);
    onSee(next.length === 0 ? undefined : next.length === 1 ? next[0]! : next);
  };
  const named = mark.values.some(({id}) => id === "none") ? mark.values : [...mark.values, {id: "none", name: "looked, there is none", says: null}];
  return (
    <>
      <ul className="values">
        {[...named, {id: "other", name: "something else", says: null}].map(({id, name, says}) => (
          <li key={id}>
            <label><input type="checkbox" checked={ticked.includes(id)} onChange={({target}) => tick(id, target.checked)} /><span>{name}{says && <span className="quiet"> {says}</span>}</span></label>
          </li>
        ))}
      </ul>
      {ticked.length > 1 && <p className="quiet">Several are ticked: it may be any of them.</p>}
    </>
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
  return (
    <div className="text-entry">
      <label htmlFor={id}>{mark.kind === "serial" ? "The number" : "As printed; ? for a figure that cannot be read"}</label>
      <input id={id} className="print" inputMode={mark.kind === "serial" ? "numeric" : "text"} autoCapitalize="characters" spellCheck={false} value={none || seen === undefined ? "" : tickedOf(typeof seen === "number" ? String(seen) : seen).join(" ")} onChange={({target}) => onSee(target.value === "" ? undefined : target.value)} />
      <label><input type="checkbox" checked={none} onChange={({target}) => onSee(target.checked ? "none" : undefined)} />looked, there is none</label>
    </div>
  );
}
