// Where a flaw counts for more or less: a word of its place, and how many times.
import type {GradeRule} from "../../state/rule.ts";
import {Button} from "../ui/button.tsx";
import {AddKind} from "./add-kind.tsx";
import {PointsField} from "./points-field.tsx";
import {withEntry} from "./rule-kinds.ts";

type Places = GradeRule["places"];

export function RulePlaces({places, onChange}: {readonly places: Places; onChange(places: Places): void}) {
  return (
    <section aria-label="Places of the rule">
      <header><h2>Places</h2><span className="quiet">a flaw there counts so many times</span></header>
      <ul className="rule-places">
        {places.map((place, i) => (
          <li key={place.word}>
            <PointsField label={place.word} value={place.times} most={5} figures={1} onValue={(times) => onChange(withEntry(places, i, {...place, times}))} />
            <Button look="quiet" aria-label={`take out ${place.word}`} onClick={() => onChange(withEntry(places, i, null))}>take out</Button>
          </li>
        ))}
      </ul>
      <AddKind label="Another word of a place" onAdd={(word) => places.some((one) => one.word === word) || onChange([...places, {word, times: 1.5}])} />
    </section>
  );
}
