// The choice between day and night.
import {useState} from "react";
import {lampChosen, lamps, setLamp, type Lamp} from "./lamp.ts";

export function LampChoice() {
  const [lamp, choose] = useState<Lamp>(lampChosen);
  return (
    <label className="lamp">
      Light
      <select
        value={lamp}
        onChange={({target}) => {
          const to = target.value as Lamp;
          setLamp(to);
          choose(to);
        }}
      >
        {lamps.map((one) => <option key={one}>{one}</option>)}
      </select>
    </label>
  );
}
