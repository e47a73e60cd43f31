// What a worn character may be: one thing, unreadable, or one of several with weights.
import {useState} from "react";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {choicesOf, printChoices, type TypedCell} from "./row-text.ts";

export interface DoubtProps {
  readonly cell: TypedCell;
  onSet(text: string): void;
  onClose(): void;
}

export function DoubtSheet({cell, onSet, onClose}: DoubtProps) {
  const [choices, setChoices] = useState(() => [...choicesOf(cell.text), {character: "", weight: 0}]);
  const put = (index: number, part: {character?: string; weight?: number}) => {
    const next = choices.map((choice, i) => (i === index ? {...choice, ...part} : choice));
    if (next.at(-1)!.character !== "") next.push({character: "", weight: 0});
    setChoices(next);
  };
  const whole = choices.reduce((sum, {weight}) => sum + weight, 0);
  return (
    <Dialog title="What may it be?" onClose={onClose}>
      <form
        className="doubt"
        onSubmit={(event) => {
          event.preventDefault();
          onSet(printChoices(choices.map(({character, weight}) => ({character, weight: weight > 0 ? weight : character === "" ? 0 : 20}))));
        }}
      >
        {choices.map(({character, weight}, i) => (
          <div key={i} className="doubt-line">
            <input className="print" aria-label={`Character ${i + 1}`} maxLength={1} size={2} value={character} onChange={({target}) => put(i, {character: target.value.toUpperCase()})} />
            <input type="range" aria-label={`How likely ${character || "it"} is`} min={0} max={100} step={5} value={weight} disabled={character === ""} onChange={({target}) => put(i, {weight: Number(target.value)})} />
            <span className="quiet">{character === "" ? "or …" : whole > 0 ? `${Math.round((weight / whole) * 100)} in 100` : ""}</span>
          </div>
        ))}
        <p className="doubt-ways">
          <Button look="main" type="submit">Set</Button>
          <Button onClick={() => onSet("?")}>Cannot be read at all</Button>
        </p>
      </form>
    </Dialog>
  );
}
