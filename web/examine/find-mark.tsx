// Finds a mark by words, wherever on the garment it sits.
import {useState} from "react";
import type {SeePlace} from "./marks.ts";

const most = 8;

export function FindMark({places, onOpen}: {readonly places: readonly SeePlace[]; onOpen(place: string, mark: string): void}) {
  const [words, setWords] = useState("");
  const asked = words.trim().toLowerCase().split(/\s+/).filter((word) => word !== "");
  const found = asked.length === 0 ? [] : places.flatMap((place) => place.marks.filter(({name, says, values}) => asked.every((word) => `${place.name} ${name} ${says ?? ""} ${values.map((value) => value.name).join(" ")}`.toLowerCase().includes(word))).map((mark) => ({place, mark})));
  return (
    <div className="find-mark">
      <input type="search" aria-label="Find a mark by words" placeholder="Find a mark: union, washing symbols, zip …" value={words} onChange={({target}) => setWords(target.value)} />
      {asked.length > 0 && (
        <ul>
          {found.slice(0, most).map(({place, mark}) => (
            <li key={mark.id}>
              <button
                type="button"
                className="quiet"
                onClick={() => {
                  onOpen(place.id, mark.id);
                  setWords("");
                }}
              >
                {mark.name}
              </button>{" "}
              <span className="quiet">{place.name}</span>
            </li>
          ))}
          <li className="quiet" role="status">{found.length === 0 ? "No mark has these words." : found.length > most ? `and ${found.length - most} more: add a word` : ""}</li>
        </ul>
      )}
    </div>
  );
}
